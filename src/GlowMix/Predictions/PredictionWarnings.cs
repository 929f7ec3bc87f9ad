using System.Globalization;
using GlowMix.Casting;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>What a reader should know before trusting the figures, heaviest first.</summary>
internal static class PredictionWarnings
{
    private const double MostIndexStep = 0.05;
    private const double DensestIndependent = 0.2;
    private const double WidthsPerDepth = 4;
    private const int At589Nm = (590 - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;

    public static IReadOnlyList<Warning> Of(Piece piece, CastingPlan plan, Run likely, bool boundsMissing)
    {
        var list = new List<Warning>();
        void Say(string code, string? figure, FormattableString text) =>
            list.Add(new(code, figure, text.ToString(CultureInfo.InvariantCulture)));

        double depth = piece.DepthMm;
        double over = piece.DepthOverPackagesMm;
        bool glows = piece.HasPigment;
        if (over < 0)
        {
            Say(
                "packages-in-air",
                null,
                $"the packages stand {-over:0.##} mm out of the resin: lit white is the bare board's, and the LEDs charge nothing"
            );
        }
        else if (over == 0)
        {
            Say(
                "packages-in-air",
                null,
                $"the resin ends level with the packages: lit white is the bare board's, and the LEDs charge nothing"
            );
        }
        if (boundsMissing)
        {
            Say(
                "band-one-sided",
                "afterglow.luminance_mcd_m2[10]",
                $"the band is too narrow: with pigment half or twice as strong the sheet could not be met, and those runs are left out"
            );
        }
        if (over > 0 && !likely.RaMeaningful)
        {
            Say(
                "ra-beyond-method",
                "lit.ra",
                $"this tint is beyond what CIE 13.3 colour rendering is made for: Ra is not meaningful"
            );
        }
        foreach (var batch in plan.Layers.Where(l => !l.Pours))
        {
            Say(
                "does-not-pour",
                "casting.viscosity_mpa_s",
                $"{batch.Layer.Name} does not pour: grains fill {batch.PigmentVolumePercent:0} % of the mix, near the densest they pack"
            );
        }
        if (plan.DegasWindowMin <= 0)
        {
            Say(
                "no-time-to-degas",
                "casting.degas_window_min",
                $"the mix sets before it is poured: mixing and vacuum take the whole pot life"
            );
        }
        foreach (var layer in piece.Layers.Where(l => l.VolumeFraction > DensestIndependent))
        {
            Say(
                "dependent-scattering",
                null,
                $"grains fill {100 * layer.VolumeFraction:0} % of the volume of {layer.Name}; above 20 % they no longer scatter one by one, as assumed"
            );
        }
        if (over > 0 && Pitch(piece) is double pitch && pitch > 3 * over)
        {
            Say(
                "dots",
                glows ? "afterglow.luminance_mcd_m2[10]" : "lit.flux_kept_percent",
                $"LEDs {pitch:0.#} mm apart under {over:0.##} mm show as dots; {(glows ? "glow from its own LEDs is an upper bound" : "their light is taken as spread evenly")}"
            );
        }
        if (Narrowest(piece) is double narrow && narrow < WidthsPerDepth * depth)
        {
            Say(
                "narrow-pour",
                null,
                $"walls are left out, and this pour is narrow; {narrow:0.#} mm wide and {depth:0.##} mm deep, it would have to be four times as wide as deep"
            );
        }
        double step = Math.Abs(piece.Led.FillingIndex.Value - piece.Resin.RefractiveIndex.Value[At589Nm]);
        if (over > 0 && step > MostIndexStep)
        {
            Say(
                "filling-index",
                "lit.cct_k",
                $"filling of the package {piece.Led.FillingIndex.Value:0.00}, resin {piece.Resin.RefractiveIndex.Value[At589Nm]:0.00}; the face between the two indices is left out"
            );
        }
        if (glows)
        {
            SettledWarnings.Add(piece, plan, Say);
            WarnOfCharge(piece, likely.Light, Say);
        }
        if (!piece.HasSize)
        {
            Say(
                "size-unknown",
                null,
                $"no masses without count, length_mm and width_mm; and the LED windows are assumed to cover 5 % of the board"
            );
        }
        if (piece.DriveMa != piece.Led.AtMa.Value && piece.Led.RelativeFlux is null)
        {
            Say(
                "drive-linear",
                "lit.flux_lm",
                $"flux is taken in proportion to the current; assumed, no table in the LED's file"
            );
        }
        if (piece.Led.StandInNote is { } note)
        {
            Say("led-stand-in", "lit.cct_k", $"{note}");
        }
        return list;
    }

    private static void WarnOfCharge(
        Piece piece,
        PieceLight light,
        Action<string, string?, FormattableString> say
    )
    {
        foreach (
            var lamp in piece
                .Steps.Select(s => s.Lamp)
                .Where(l => l?.LacksNearUltraviolet == true)
                .DistinctBy(l => l!.Name)
        )
        {
            say(
                "lamp-near-uv",
                "afterglow.luminance_mcd_m2[10]",
                $"{lamp!.Name} is not known below {lamp.StartsAtNm:0} nm; counted as nothing there, a low estimate"
            );
        }
        if (
            piece.Steps.Any(s => s.OwnLeds)
            && light.Pour.Cells.Any(c => !c.OverPackages)
            && light.Under is not null
        )
        {
            say(
                "between-packages",
                "afterglow.capacity_filled_bottom_percent",
                $"pigment between the packages is lit only from above; by what comes down beside them, evenly, and nothing from their sides"
            );
        }
    }

    /// <summary>Distance of neighbours: in one row where the pour is narrow, else on a square grid.</summary>
    private static double? Pitch(Piece piece)
    {
        if (
            piece.Count is not int count
            || piece.LengthMm is not double length
            || piece.WidthMm is not double width
        )
        {
            return null;
        }
        double square = Math.Sqrt(length * width / count);
        return Math.Min(length, width) < square ? Math.Max(length, width) / count : square;
    }

    private static double? Narrowest(Piece piece) =>
        piece.LengthMm is double length && piece.WidthMm is double width
            ? Math.Min(length, width)
            : piece.WidthMm ?? piece.LengthMm;
}
