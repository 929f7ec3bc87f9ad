using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Pieces;

/// <summary>The steps of a recipe's charge with their lamps looked up.</summary>
internal sealed class ChargeAssembly(Recipe recipe, Shelf shelf, AssemblyNotes notes)
{
    private const double DefaultChargeMinutes = 480;

    /// <summary>The steps; those of a usual day where the recipe has none.</summary>
    /// <param name="glows">Whether there is pigment that they charge.</param>
    /// <returns>Null, with the problems noted, if a step cannot be used.</returns>
    public ImmutableArray<PieceStep>? StepsOf(bool glows)
    {
        if (recipe.Charge.Steps.IsEmpty)
        {
            notes.Note(glows, "20 °C");
            notes.Note(glows, "charged 8 h by its own LEDs");
            return
            [
                new PieceStep(
                    true,
                    null,
                    null,
                    DefaultChargeMinutes,
                    PieceAssembly.DefaultTemperatureC,
                    "8 h by its own LEDs"
                ),
            ];
        }
        notes.Note(
            glows
                && (
                    recipe.Darkness.TemperatureC is null
                    || recipe.Charge.Steps.Any(s => s.TemperatureC is null)
                ),
            "20 °C where no temperature is given"
        );
        var steps = recipe.Charge.Steps.Select(StepOf).ToImmutableArray();
        return steps.Any(s => s is null) ? null : [.. steps.Select(s => s!)];
    }

    private PieceStep? StepOf(RecipeChargeStep step, int index)
    {
        double temperature = step.TemperatureC ?? PieceAssembly.DefaultTemperatureC;
        string time = PieceTexts.Hours(step.Minutes);
        if (step.LampName is null)
        {
            string words = step.OwnLeds ? $"{time} by its own LEDs" : $"{time} dark";
            return new(step.OwnLeds, null, null, step.Minutes, temperature, words);
        }
        string path = $"charge.steps.{index + 1}";
        var lamp = notes.Take(shelf.Lamp(step.LampName), step.OwnLeds ? $"{path}.with" : $"{path}.light");
        if (lamp is null)
        {
            return null;
        }
        if (step.IlluminanceLx is double && !lamp.TakesIlluminance)
        {
            notes.Error($"{path}.illuminance_lx", PieceTexts.LuxOfADarkLamp(lamp.Name, lamp.LmPerW));
            return null;
        }
        Spectrum light = step.IlluminanceLx is double lx
            ? lamp.WPerM2NmAtLux(lx)
            : lamp.WPerM2NmAtIrradiance(step.IrradianceWPerM2 ?? 0);
        string strength = step.IlluminanceLx is double lux
            ? $"{PieceTexts.Number(lux)} lx"
            : $"{PieceTexts.Number(step.IrradianceWPerM2 ?? 0)} W/m²";
        string own = step.OwnLeds ? "its own LEDs and " : "";
        return new(
            step.OwnLeds,
            lamp,
            light,
            step.Minutes,
            temperature,
            $"{time} by {own}{strength} of {lamp.Name}"
        );
    }
}
