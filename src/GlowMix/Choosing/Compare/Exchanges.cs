using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Compare;

/// <summary>What makes one piece another: the things that differ, each to be exchanged alone.</summary>
internal static class Exchanges
{
    /// <summary>The exchanges that together lead from one piece to another.</summary>
    public static IReadOnlyList<Exchange> Between(Piece from, Piece to)
    {
        var found = new List<Exchange>();
        if (!SameMaterial.Is(from.Resin, to.Resin))
        {
            found.Add(new("resin", p => WithResin(p, to.Resin)));
        }
        if (!SameMaterial.Is(from.Led, to.Led))
        {
            found.Add(new("led", p => p with { Led = to.Led }, KeepsPour: AreOfOneSize(from.Led, to.Led)));
        }
        if (from.DriveMa != to.DriveMa)
        {
            found.Add(new("led.drive_ma", p => p with { DriveMa = to.DriveMa }, KeepsPour: true));
        }
        if (!SameMaterial.Is(from.Board, to.Board))
        {
            found.Add(new("board", p => p with { Board = to.Board }, KeepsPour: true));
        }
        if ((from.Count, from.LengthMm, from.WidthMm) != (to.Count, to.LengthMm, to.WidthMm))
        {
            found.Add(
                new("size", p => p with { Count = to.Count, LengthMm = to.LengthMm, WidthMm = to.WidthMm })
            );
        }
        if (from.Recipe.Pour.RunsOutMm != to.Recipe.Pour.RunsOutMm)
        {
            found.Add(
                new(
                    "pour.runs_out_mm",
                    p =>
                        p with
                        {
                            Recipe = p.Recipe with
                            {
                                Pour = p.Recipe.Pour with { RunsOutMm = to.Recipe.Pour.RunsOutMm },
                            },
                        },
                    KeepsPour: true
                )
            );
        }
        if (from.IsFaceUp != to.IsFaceUp)
        {
            found.Add(new("pour.face", p => p with { IsFaceUp = to.IsFaceUp }));
        }
        found.AddRange(OfLayers(from, to));
        if (
            (from.MixingTemperatureC, from.WastePercent, from.VacuumMin)
            != (to.MixingTemperatureC, to.WastePercent, to.VacuumMin)
        )
        {
            found.Add(
                new(
                    "mixing",
                    p =>
                        p with
                        {
                            MixingTemperatureC = to.MixingTemperatureC,
                            WastePercent = to.WastePercent,
                            VacuumMin = to.VacuumMin,
                        }
                )
            );
        }
        if (from.Start != to.Start || !AreSame(from.Steps, to.Steps))
        {
            found.Add(new("charge", p => p with { Start = to.Start, Steps = to.Steps }, KeepsPour: true));
        }
        if ((from.DarknessTemperatureC, from.LimitMcdPerM2) != (to.DarknessTemperatureC, to.LimitMcdPerM2))
        {
            found.Add(
                new(
                    "darkness",
                    p =>
                        p with
                        {
                            DarknessTemperatureC = to.DarknessTemperatureC,
                            LimitMcdPerM2 = to.LimitMcdPerM2,
                        },
                    KeepsPour: true
                )
            );
        }
        return found;
    }

    private static IEnumerable<Exchange> OfLayers(Piece from, Piece to)
    {
        string[] before = [.. from.Layers.Select(l => l.Name)];
        string[] after = [.. to.Layers.Select(l => l.Name)];
        if (!before.SequenceEqual(after))
        {
            // Layers come, go or change places: their stack is exchanged as one.
            yield return new("layers", p => p with { Layers = InResin(to.Layers, p.Resin) });
            yield break;
        }
        for (int i = 0; i < before.Length; i++)
        {
            int index = i;
            var (a, b) = (from.Layers[i], to.Layers[i]);
            string path = $"layers.{a.Name}";
            if (a.DepthMm != b.DepthMm)
            {
                yield return new(
                    $"{path}.depth_mm",
                    p => WithLayer(p, index, l => l with { DepthMm = b.DepthMm })
                );
            }
            if (!SameMaterial.Is(a.Pigment, b.Pigment))
            {
                // A clear layer has no loading of its own to be changed alone.
                bool takesAll = a.Pigment is null || b.Pigment is null;
                yield return new(
                    $"{path}.pigment",
                    p => WithLayer(p, index, l => takesAll ? WithAll(l, b) : WithPigment(l, b))
                );
                if (takesAll)
                {
                    continue;
                }
            }
            else if ((a.GrainMedianUm, a.GrainGsd) != (b.GrainMedianUm, b.GrainGsd))
            {
                yield return new(
                    $"{path}.grain_median_um",
                    p =>
                        WithLayer(
                            p,
                            index,
                            l => l with { GrainMedianUm = b.GrainMedianUm, GrainGsd = b.GrainGsd }
                        )
                );
            }
            if (a.LoadingPercent != b.LoadingPercent)
            {
                yield return new(
                    $"{path}.loading_percent",
                    p => WithLayer(p, index, l => l with { LoadingPercent = b.LoadingPercent })
                );
            }
        }
    }

    private static PieceLayer WithPigment(PieceLayer layer, PieceLayer other) =>
        layer with
        {
            Pigment = other.Pigment,
            GrainMedianUm = other.GrainMedianUm,
            GrainGsd = other.GrainGsd,
        };

    private static PieceLayer WithAll(PieceLayer layer, PieceLayer other) =>
        WithPigment(layer, other) with
        {
            LoadingPercent = other.LoadingPercent,
        };

    private static Piece WithResin(Piece piece, Resin resin) =>
        piece with
        {
            Resin = resin,
            Layers = InResin(piece.Layers, resin),
        };

    private static Piece WithLayer(Piece piece, int index, Func<PieceLayer, PieceLayer> change) =>
        piece with
        {
            Layers = InResin(piece.Layers.SetItem(index, change(piece.Layers[index])), piece.Resin),
        };

    // The share of the volume follows from loading, pigment and resin.
    private static ImmutableArray<PieceLayer> InResin(ImmutableArray<PieceLayer> layers, Resin resin) =>
        [
            .. layers.Select(l =>
                l with
                {
                    VolumeFraction = l.Pigment is { } pigment
                        ? PieceChange.VolumeFractionOf(l.LoadingPercent, pigment, resin)
                        : 0,
                }
            ),
        ];

    // Packages take up room: with others in it a channel takes more or less resin, whose grains settle for a longer or shorter time.
    private static bool AreOfOneSize(Led a, Led b) =>
        (a.PackageLengthMm.Value, a.PackageWidthMm.Value, a.PackageHeightMm.Value)
        == (b.PackageLengthMm.Value, b.PackageWidthMm.Value, b.PackageHeightMm.Value);

    private static bool AreSame(ImmutableArray<PieceStep> a, ImmutableArray<PieceStep> b) =>
        a.Length == b.Length
        && a.Zip(b)
            .All(s =>
                s.First.OwnLeds == s.Second.OwnLeds
                && SameMaterial.Is(s.First.Lamp, s.Second.Lamp)
                && AreSame(s.First.LampWPerM2Nm, s.Second.LampWPerM2Nm)
                && s.First.Minutes == s.Second.Minutes
                && s.First.TemperatureC == s.Second.TemperatureC
            );

    private static bool AreSame(Spectrum? a, Spectrum? b) =>
        a is null || b is null ? a is null && b is null : a.Samples.SequenceEqual(b.Samples);
}
