using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads the section 'charge'.</summary>
internal static class ChargeReader
{
    private const string OwnLeds = "own-leds";
    private const string Dark = "dark";
    private const int MostSteps = 100;
    private const double MinutesPerDay = 1440;

    public static RecipeCharge Read(MappingReader parent)
    {
        var section = RecipeSection.Optional(parent, "charge");
        ChargeStart? start = section.Word("start") switch
        {
            "empty" => ChargeStart.Empty,
            "settled-daily" => ChargeStart.SettledDaily,
            _ => null,
        };
        var steps = Steps(section.Reader.OptionalList("steps", 1, MostSteps));
        double minutes = 0;
        foreach (var step in steps)
        {
            minutes += step.Minutes;
        }
        if (start == ChargeStart.SettledDaily && minutes > MinutesPerDay)
        {
            section.Reader.Error("start", RecipeTexts.LongerThanADay(minutes));
        }
        section.Finish();
        return new() { Start = start, Steps = steps };
    }

    private static ImmutableArray<RecipeChargeStep> Steps(ListReader? list)
    {
        if (list is null)
        {
            return [];
        }
        var steps = ImmutableArray.CreateBuilder<RecipeChargeStep>(list.Count);
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is { } reader)
            {
                steps.Add(Step(new RecipeSection(reader, "charge.steps.*")));
            }
        }
        if (steps.Count == list.Count)
        {
            if (steps.All(s => s.IsDark))
            {
                list.Problems.Error(list.Node.Place, RecipeTexts.NoLitStep);
            }
            else if (steps[^1].IsDark)
            {
                list.Problems.Warning(list.Node.Items[^1].Place, RecipeTexts.DarkAtTheEnd);
            }
        }
        return steps.ToImmutable();
    }

    private static RecipeChargeStep Step(RecipeSection section)
    {
        var reader = section.Reader;
        string light = section.NeededMaterial("light");
        string? with = section.Material("with");
        var step = new RecipeChargeStep
        {
            OwnLeds = light == OwnLeds,
            LampName = light is OwnLeds or Dark ? with : light,
            IlluminanceLx = section.Number("illuminance_lx"),
            IlluminanceTolerancePercent = section.Number("illuminance_tolerance_percent"),
            IrradianceWPerM2 = section.Number("irradiance_w_m2"),
            IrradianceTolerancePercent = section.Number("irradiance_tolerance_percent"),
            Minutes = section.NeededNumber("minutes"),
            TemperatureC = section.Number("temperature_c"),
        };
        section.Needs("illuminance_tolerance_percent", "illuminance_lx");
        section.Needs("irradiance_tolerance_percent", "irradiance_w_m2");
        reader.NotBoth("illuminance_lx", "irradiance_w_m2");
        if (light.Length > 0)
        {
            CheckLamp(reader, light, with);
        }
        section.Finish();
        return step;
    }

    private static void CheckLamp(MappingReader reader, string light, string? with)
    {
        if (with is not null && light != OwnLeds)
        {
            reader.Error("with", RecipeTexts.WithNeedsOwnLeds(light));
            return;
        }
        if (with is OwnLeds or Dark)
        {
            reader.Error("with", RecipeTexts.WithIsNotALamp);
            return;
        }
        if (with is null && reader.Has("with"))
        {
            return;
        }
        string? lamp = light is OwnLeds or Dark ? with : light;
        string? strength =
            reader.Has("illuminance_lx") ? "illuminance_lx"
            : reader.Has("irradiance_w_m2") ? "irradiance_w_m2"
            : null;
        if (lamp is null && strength is not null)
        {
            reader.Error(strength, RecipeTexts.StrengthWithoutLamp(strength, light));
        }
        if (lamp is not null && strength is null)
        {
            reader.Error(with is null ? "light" : "with", RecipeTexts.LampNeedsStrength(lamp));
        }
    }
}
