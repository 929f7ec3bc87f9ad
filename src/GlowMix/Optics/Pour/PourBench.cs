using GlowMix.Optics.Slab;

namespace GlowMix.Optics.Pour;

/// <summary>Work space to solve pours of the same mixes, wavelength by wavelength.</summary>
internal sealed class PourBench
{
    private readonly PourOptics[] pours;
    private readonly LayerModes[] modes;
    private readonly StackTransfer transfer;
    private readonly StackTransfer between;
    private readonly CellWeights[] weights;
    private readonly LayerLight[] light;
    private readonly bool[][] stands;
    private readonly bool[] hasSameBetween;

    // The pour on the bench.
    private PourOptics optics;

    public PourBench(PourOptics[] pours)
    {
        this.pours = pours;
        optics = pours[0];
        int nodes = optics.Stack.Resin.StreamsAt(0).Count;
        int mostParts = pours.Max(p => p.Grid.Parts.Count);
        int mostCells = pours.Max(p => p.Grid.Parts.Max(part => part.CellCount));
        modes = [.. optics.Stack.Layers.Select(_ => new LayerModes(nodes))];
        stands = [.. pours.Select((pour, p) => StandingOf(pour, p > 0 ? pours[p - 1] : null))];
        hasSameBetween =
        [
            .. pours.Select((pour, p) => p > 0 && HaveSameBetween(pour, pours[p - 1], stands[p])),
        ];
        transfer = new StackTransfer(nodes);
        between = new StackTransfer(nodes);
        weights = new CellWeights[mostParts];
        light = new LayerLight[mostParts];
        for (int i = 0; i < mostParts; i++)
        {
            (weights[i], light[i]) = (new(nodes, mostCells), new(nodes));
        }
    }

    public void SolveAt(int wavelength, bool withGlow)
    {
        var streams = optics.Stack.Resin.StreamsAt(wavelength);
        for (int i = 0; i < modes.Length; i++)
        {
            modes[i].Solve(MediumOf(optics.Stack, i, wavelength), streams);
        }
        for (int p = 0; p < pours.Length; p++)
        {
            optics = pours[p];
            Prepare(stands[p], streams);
            SolvePour(wavelength, withGlow && optics.GlowsAt(wavelength));
            if (optics.DownBetween is { } down && optics.UpBetween is { } up)
            {
                if (hasSameBetween[p])
                {
                    down.CopyFrom(pours[p - 1].DownBetween!, wavelength);
                    up.CopyFrom(pours[p - 1].UpBetween!, wavelength);
                }
                else
                {
                    SolveBetween(down, up, wavelength);
                }
            }
        }
    }

    /// <summary>Which parts of a pour the one before it on the bench has as well: these stand prepared.</summary>
    private static bool[] StandingOf(PourOptics pour, PourOptics? before) =>
        [
            .. pour.Grid.Parts.Select(
                (part, i) =>
                    before is not null && i < before.Grid.Parts.Count && part.IsLike(before.Grid.Parts[i])
            ),
        ];

    private static bool HaveSameBetween(PourOptics pour, PourOptics before, bool[] stands) =>
        pour.Grid.FirstOverPackages == before.Grid.FirstOverPackages
        && stands.Take(pour.Grid.FirstOverPackages).All(same => same);

    private void Prepare(bool[] standing, StreamQuadrature streams)
    {
        var parts = optics.Grid.Parts;
        transfer.Begin(streams);
        for (int i = 0; i < parts.Count; i++)
        {
            if (standing[i])
            {
                transfer.AddStanding();
                continue;
            }
            transfer.Add(modes[parts[i].Layer], parts[i].DepthMm);
            if (parts[i].CellCount > 0)
            {
                weights[i].Prepare(transfer.Layer(i), parts[i].EdgesMm);
            }
        }
        transfer.Join();
    }

    private void SolvePour(int wavelength, bool withGlow)
    {
        Record(optics.Sky, wavelength, transfer.SolveSky(light));
        Record(optics.WholeFloor, wavelength, transfer.SolveFloor(light));
        if (withGlow)
        {
            optics.GroupFluence[wavelength] = SolveGroups();
        }

        if (optics.OverPackages is { } over)
        {
            int first = optics.Grid.FirstOverPackages;
            Record(over, wavelength, transfer.SolveFloor(light, first), first);
        }
    }

    private void SolveBetween(SourceResponse down, SourceResponse up, int wavelength)
    {
        int count = optics.Grid.FirstOverPackages;
        between.BeginWithLowest(transfer, count);
        between.Join(openTop: true);
        Record(down, wavelength, between.SolveDown(light), endPart: count);
        Record(up, wavelength, between.SolveFloor(light), endPart: count);
    }

    /// <summary>Keeps one source's answer in the parts from one, upwards to below another.</summary>
    private void Record(
        SourceResponse response,
        int wavelength,
        SourceShares shares,
        int firstPart = 0,
        int endPart = int.MaxValue
    )
    {
        var stack = optics.Stack;
        var parts = optics.Grid.Parts;
        int cells = optics.Cells.Count;
        // Through a pour that lets nothing through, rounding may leave a little less than nothing.
        response.Escaped[wavelength] = Math.Max(0, shares.Escaped);
        response.Floor[wavelength] = Math.Max(0, shares.Floor);
        for (int i = firstPart; i < Math.Min(endPart, parts.Count); i++)
        {
            var part = parts[i];
            var inside = light[i];
            double absorbed = transfer.Layer(i).Absorbed(inside);
            double byResin = 1;
            if (part.CellCount > 0)
            {
                var layer = stack.Layers[part.Layer];
                double pigment = optics.PigmentAbsorptionPerMm(part.Layer, wavelength);
                double resin = (1 - layer.VolumeFraction) * stack.Resin.AbsorptionPerMm[wavelength];
                byResin = resin > 0 ? resin / (resin + pigment) : 0;
                var row = response.CellFluence.AsSpan((wavelength * cells) + part.FirstCell, part.CellCount);
                for (int c = 0; c < row.Length; c++)
                {
                    row[c] = weights[i].Mean(inside, c);
                }
            }
            response.Resin[wavelength] += byResin * absorbed;
            response.Pigment[wavelength] += (1 - byResin) * absorbed;
        }
    }

    private double[] SolveGroups()
    {
        var parts = optics.Grid.Parts;
        int groups = optics.Grid.GroupCount;
        var fluence = new double[groups * groups];
        for (int p = 0; p < parts.Count; p++)
        {
            var part = parts[p];
            if (part.CellCount == 0)
            {
                continue;
            }
            int firstGroup = part.FirstGroup;
            for (int g = 0; g < part.GroupEdgesMm.Length - 1; g++)
            {
                int from = firstGroup + g;
                transfer.SolveCellBelow(p, part.GroupEdgesMm[g], part.GroupEdgesMm[g + 1], light);
                AddGroupMeans(fluence.AsSpan(from * groups, groups), upTo: p);
                // What the groups of lower parts send into this one is what it sends into them.
                for (int below = 0; below < firstGroup; below++)
                {
                    fluence[(below * groups) + from] = fluence[(from * groups) + below];
                }
            }
            CellSource.AddOwnFluence(
                transfer.Layer(p),
                part.GroupEdgesMm,
                fluence.AsSpan((firstGroup * groups) + firstGroup),
                groups
            );
        }
        return fluence;
    }

    private void AddGroupMeans(Span<double> row, int upTo)
    {
        var parts = optics.Grid.Parts;
        for (int q = 0; q <= upTo; q++)
        {
            var part = parts[q];
            for (int c = 0; c < part.CellCount; c++)
            {
                int group = optics.Grid.GroupOfCell[part.FirstCell + c];
                double share = (part.EdgesMm[c + 1] - part.EdgesMm[c]) / optics.Grid.GroupWidthMm[group];
                row[group] += share * weights[q].MeanWithOwn(light[q], c);
            }
        }
    }

    private static Medium MediumOf(PourStack stack, int index, int wavelength)
    {
        var layer = stack.Layers[index];
        double resin = stack.Resin.AbsorptionPerMm[wavelength];
        if (!layer.HasPigment)
        {
            return Medium.Clear(resin);
        }
        double phi = layer.VolumeFraction;
        return new Medium(
            ((1 - phi) * resin) + (phi * layer.Grains!.AbsorptionPerMm[wavelength]),
            phi * layer.Grains.ScatteringPerMm[wavelength],
            layer.Grains.Moments(wavelength)
        );
    }
}
