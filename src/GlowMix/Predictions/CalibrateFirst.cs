using System.Globalization;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>Numbers of a piece that nobody has measured, in the order in which a reading of them helps most.</summary>
internal static class CalibrateFirst
{
    private const int At450Nm = (450 - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;

    public static IReadOnlyList<Assumption> Of(Piece piece)
    {
        var list = new List<Assumption>();
        foreach (
            var pigment in piece
                .Layers.Where(l => l.HasPigment)
                .Select(l => l.Pigment!)
                .DistinctBy(p => p.Name)
        )
        {
            Add(
                list,
                pigment.AbsorptionPerMm,
                $"grain absorption of {pigment.Name}",
                Say(
                    $"{pigment.AbsorptionPerMm.Value[At450Nm]:0.##} /mm at 450 nm, good to a factor of two; a potted piece's spectrum with and without pigment settles it"
                )
            );
            Add(
                list,
                pigment.RefractiveIndex,
                $"grain index of {pigment.Name}",
                Say($"{pigment.RefractiveIndex.Value[At450Nm]:0.00} at 450 nm; the same reading settles it")
            );
            Add(
                list,
                pigment.TrapCapacityPerG,
                $"trap capacity of {pigment.Name}",
                Say(
                    $"{pigment.TrapCapacityPerG.Value:0.0e+0} /g, and how its traps are spread; a decay reading of a known layer after a known charge settles both"
                )
            );
        }
        if (piece.DepthOverPackagesMm > 0)
        {
            Add(
                list,
                piece.Led.ReturnMatrix,
                $"package return of {piece.Led.Name}",
                "what the package makes of light sent back to it; a bare and a potted reading settle it"
            );
            Add(
                list,
                piece.Board.Reflectance,
                $"reflectance of {piece.Board.Name}",
                Say(
                    $"{piece.Board.Reflectance.Value[At450Nm]:0.00} at 450 nm under resin; a reading of the wetted board settles it"
                )
            );
            Add(
                list,
                piece.Resin.AbsorptionPerMm,
                $"absorption of {piece.Resin.Name}",
                Say(
                    $"{piece.Resin.AbsorptionPerMm.Value[At450Nm]:0.000} /mm at 450 nm; a reading through cured resin settles it"
                )
            );
        }
        return list;
    }

    private static void Add<T>(List<Assumption> list, Sourced<T> value, string what, string text)
    {
        if (value.Mark is SourceMark.Assumed or SourceMark.FromMemory)
        {
            list.Add(new(what, text));
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
