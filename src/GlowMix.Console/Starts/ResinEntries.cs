using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Console.Starts;

/// <summary>The entries of a new resin that its sheet tells, or that follow from what it tells.</summary>
internal sealed class ResinEntries(StartAnswers answers, Resin nearest)
{
    private const double DensityDigits = 1e4;

    // Fraunhofer's lines F, d and C, which Abbe's number is told by.
    private const double LineFNm = 486.1;
    private const double LineDNm = 587.6;
    private const double LineCNm = 656.3;

    private readonly (double Mix, double A, double B, string MixNote, string PartsNote) density = Densities(
        answers,
        nearest
    );

    /// <summary>Writes the entry of a key if anything was told for it.</summary>
    public bool WriteTold(StartText text, string key)
    {
        switch (key)
        {
            case "refractive_index" or "refractive_index_d" when answers.Number("index") is { } index:
                text.Entry("refractive_index_d", index, "label; taken at 587.6 nm")
                    .Entry(
                        "abbe_number",
                        Math.Round(AbbeOf(nearest.RefractiveIndex.Value), 1),
                        $"assumed; as {nearest.Name}"
                    );
                return true;
            case "abbe_number" when answers.Has("index"):
                return true;
            case "density_mix_g_cm3":
                text.Entry(key, density.Mix, density.MixNote);
                return true;
            case "density_part_a_g_cm3":
                text.Entry(
                    key,
                    density.A,
                    answers.Has("density-a-g-cm3") ? LabelFields.Label : density.PartsNote
                );
                return true;
            case "density_part_b_g_cm3":
                text.Entry(
                    key,
                    density.B,
                    answers.Has("density-b-g-cm3") ? LabelFields.Label : density.PartsNote
                );
                return true;
            case "mix_ratio" when Ratio(answers) is { } ratio:
                text.Line("mix_ratio:")
                    .Line($"  by: {answers.Text("by")}")
                    .Line($"  part_a: {NumberText.Write(ratio.PartA)}")
                    .Line($"  part_b: {NumberText.Write(ratio.PartB)}")
                    .Source(LabelFields.Label);
                return true;
            case "viscosity" when answers.Number("viscosity-mpa-s") is { } mPaS:
                var (atC, note) = ResinStart.TemperatureOf(answers, "viscosity-at-c");
                text.Line("viscosity:")
                    .Line($"  - mpa_s: {NumberText.Write(mPaS)}")
                    .Line($"    temperature_c: {NumberText.Write(atC)}")
                    .Source(note, indent: 4);
                return true;
            case "pot_life" when answers.Number("pot-life-min") is { } minutes:
                WritePotLife(text, minutes);
                return true;
            case "gel_time_min":
                return WriteGel(text, key);
            case "max_pour_depth_mm" when answers.Number("max-depth-mm") is { } depth:
                text.Entry(key, depth, LabelFields.Label);
                return true;
            case "cure_full_h" when answers.Number("cure-full-h") is { } hours:
                text.Entry(key, hours, LabelFields.Label);
                return true;
            default:
                return false;
        }
    }

    private void WritePotLife(StartText text, double minutes)
    {
        var (atC, note) = ResinStart.TemperatureOf(answers, "pot-life-at-c");
        double massG = answers.Number("pot-life-mass-g") ?? nearest.PotLives[0].Value.MassG;
        string mass = answers.Has("pot-life-mass-g")
            ? ""
            : $"{(note == LabelFields.Label ? "; " : ", ")}the mass is not told and is assumed";
        text.Line("pot_life:")
            .Line($"  - minutes: {NumberText.Write(minutes)}")
            .Line($"    mass_g: {NumberText.Write(massG)}")
            .Line($"    temperature_c: {NumberText.Write(atC)}")
            .Source(note + mass, indent: 4);
    }

    // A resin that stays workable twice as long gels twice as late.
    private bool WriteGel(StartText text, string key)
    {
        if (answers.Number("gel-min") is { } told)
        {
            text.Entry(key, told, LabelFields.Label);
            return true;
        }
        if (answers.Number("pot-life-min") is not { } minutes)
        {
            return false;
        }
        double ratio = nearest.GelTimeMin.Value / nearest.PotLives[0].Value.Minutes;
        text.Entry(
            key,
            Math.Round(minutes * ratio),
            $"assumed; stands to the pot life as in {nearest.Name}",
            "factor: 1.5"
        );
        return true;
    }

    // The three densities and the ratio must agree, or a ratio by volume would give wrong masses.
    private static (double, double, double, string, string) Densities(StartAnswers answers, Resin nearest)
    {
        double a = answers.Number("density-a-g-cm3") ?? nearest.DensityPartAGPerCm3.Value;
        double b = answers.Number("density-b-g-cm3") ?? nearest.DensityPartBGPerCm3.Value;
        double shareA = MassShareOfPartA(answers, nearest, a, b);
        double mix = 1 / ((shareA / a) + ((1 - shareA) / b));
        string parts = $"assumed; as {nearest.Name}";
        if (answers.Number("density-g-cm3") is not { } told)
        {
            return (Rounded(mix), a, b, "computed; from the densities of the parts and their ratio", parts);
        }
        double scale = told / mix;
        return (
            told,
            answers.Has("density-a-g-cm3") ? a : Rounded(a * scale),
            answers.Has("density-b-g-cm3") ? b : Rounded(b * scale),
            LabelFields.Label,
            $"assumed; stands to the mix as in {nearest.Name}"
        );
    }

    private static double MassShareOfPartA(StartAnswers answers, Resin nearest, double a, double b)
    {
        if (Ratio(answers) is not { } told)
        {
            return nearest.MassShareOfPartA;
        }
        bool byVolume = answers.Text("by") == "volume";
        double massA = told.PartA * (byVolume ? a : 1);
        double massB = told.PartB * (byVolume ? b : 1);
        return massA / (massA + massB);
    }

    private static (double PartA, double PartB)? Ratio(StartAnswers answers) =>
        answers.Text("mix-ratio") is { } text ? LabelFields.Pair(text, ':') : null;

    private static double AbbeOf(Spectrum index) =>
        (At(index, LineDNm) - 1) / (At(index, LineFNm) - At(index, LineCNm));

    private static double At(Spectrum spectrum, double nm)
    {
        double place = (nm - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;
        int below = (int)place;
        return spectrum[below] + ((place - below) * (spectrum[below + 1] - spectrum[below]));
    }

    private static double Rounded(double density) => Math.Round(density * DensityDigits) / DensityDigits;
}
