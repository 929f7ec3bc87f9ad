using GlowMix.Spectra;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace GlowMix.Optics.Pour;

/// <summary>
/// The way of pigment's own light out of a pour: escape by reciprocity, and the part that pigment takes back and sends out again
/// with its yield, followed to the end. Immutable.
/// </summary>
public sealed class GlowEscape
{
    private readonly PourOptics pour;
    private readonly double[] escape;
    private readonly Matrix<double> repeated;

    private GlowEscape(PourOptics pour, double[] escape, Matrix<double> repeated)
    {
        this.pour = pour;
        this.escape = escape;
        this.repeated = repeated;
    }

    /// <summary>Over a floor.</summary>
    /// <param name="pour">The pour, with pigment.</param>
    /// <param name="floorReflectance">Of board and packages together, as the resin sees them.</param>
    public static GlowEscape Of(PourOptics pour, Spectrum floorReflectance)
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(floorReflectance);
        int cells = pour.Cells.Count;
        if (cells == 0)
        {
            throw new ArgumentException("The pour has no pigment.", nameof(pour));
        }
        var escape = new double[WavelengthGrid.Count * cells];
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            double n = pour.Stack.Resin.Index[i];
            double up = Feedback(pour, floorReflectance, i) * pour.Sky.Floor[i];
            var sky = pour.Sky.FluenceAt(i);
            var floor = pour.WholeFloor.FluenceAt(i);
            for (int c = 0; c < cells; c++)
            {
                escape[(i * cells) + c] = (sky[c] + (up * floor[c])) / (4 * n * n);
            }
        }
        return new(pour, escape, Repeated(pour, floorReflectance));
    }

    /// <summary>Share of a cell's own light that leaves the piece at a wavelength, before any is taken back by pigment and sent out anew.</summary>
    public double EscapeShare(int cell, int wavelength) => escape[(wavelength * pour.Cells.Count) + cell];

    /// <summary>What one photon first emitted in each cell adds outside, in a weighting of watts, re-emission included.</summary>
    /// <param name="perW">Weight of a watt at each wavelength: lm/W for luminous flux.</param>
    /// <returns>One number a cell, in the weight's unit times joules per photon.</returns>
    public double[] PerPhoton(Spectrum perW)
    {
        ArgumentNullException.ThrowIfNull(perW);
        var direct = new double[pour.Cells.Count];
        for (int c = 0; c < direct.Length; c++)
        {
            var emission = EmissionOf(c);
            double sum = 0;
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                sum += emission[i] * perW[i] * EscapeShare(c, i);
            }
            direct[c] = sum * WavelengthGrid.StepNm / PhotonsPerJoule(emission);
        }
        var again = repeated * DenseVector.OfArray(GroupMeans(direct));
        return [.. direct.Select((value, c) => value + again[pour.Grid.GroupOfCell[c]])];
    }

    /// <summary>Light outside, W/nm, from the photons first emitted in each cell.</summary>
    /// <param name="firstEmittedPerS">Photons per second, one number a cell.</param>
    public Spectrum EscapedWPerNm(ReadOnlySpan<double> firstEmittedPerS)
    {
        int cells = pour.Cells.Count;
        if (firstEmittedPerS.Length != cells)
        {
            throw new ArgumentException($"{cells} cells need as many rates.", nameof(firstEmittedPerS));
        }
        var groups = new double[pour.Grid.GroupCount];
        for (int c = 0; c < cells; c++)
        {
            groups[pour.Grid.GroupOfCell[c]] += firstEmittedPerS[c];
        }
        var again = repeated.LeftMultiply(DenseVector.OfArray(groups));
        var joules = new double[cells];
        for (int c = 0; c < cells; c++)
        {
            double emitted = firstEmittedPerS[c] + (again[pour.Grid.GroupOfCell[c]] * ShareOfGroup(c));
            joules[c] = emitted / PhotonsPerJoule(EmissionOf(c));
        }
        var outside = new double[WavelengthGrid.Count];
        for (int c = 0; c < cells; c++)
        {
            var emission = EmissionOf(c);
            for (int i = 0; i < outside.Length; i++)
            {
                outside[i] += joules[c] * emission[i] * EscapeShare(c, i);
            }
        }
        return Spectrum.FromSamples(outside);
    }

    /// <summary>Photons emitted again in a group (column) for one first emitted in another (row), all generations.</summary>
    private static Matrix<double> Repeated(PourOptics pour, Spectrum floorReflectance)
    {
        int groups = pour.Grid.GroupCount;
        var once = new DenseMatrix(groups, groups);
        var emitters = pour.Grid.LayerOfGroup;
        var floorFluence = new double[groups];
        var photonShare = new double[groups];
        for (int g = 0; g < groups; g++)
        {
            // Photons per step of the samples that carry re-absorption add up to all of the emission's.
            photonShare[g] = 1 / CarriedPhotons(pour, emitters[g]);
        }
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            if (pour.GroupFluence[i] is not { } black)
            {
                continue;
            }
            MeanOverGroups(pour, pour.WholeFloor.FluenceAt(i), floorFluence);
            double feedback = Feedback(pour, floorReflectance, i);
            for (int a = 0; a < groups; a++)
            {
                double emitted =
                    pour.Stack.Layers[emitters[a]].EmissionPerNm![i]
                    * WavelengthGrid.NmAt(i)
                    * photonShare[a];
                for (int b = 0; b < groups; b++)
                {
                    // By reciprocity a cell sends a quarter of the floor source's fluence to the floor.
                    double fluence =
                        black[(a * groups) + b] + (feedback * floorFluence[a] / 4 * floorFluence[b]);
                    once[a, b] +=
                        emitted
                        * fluence
                        * pour.PigmentAbsorptionPerMm(emitters[b], i)
                        * pour.Grid.GroupWidthMm[b]
                        * pour.Stack.Layers[emitters[b]].Yield;
                }
            }
        }
        var one = DenseMatrix.CreateIdentity(groups);
        // Between groups that no light passes between, rounding may leave a little less than nothing.
        var repeated = (one - once).Inverse() - one;
        for (int a = 0; a < groups; a++)
        {
            for (int b = 0; b < groups; b++)
            {
                repeated[a, b] = Math.Max(0, repeated[a, b]);
            }
        }
        return repeated;
    }

    private static double Feedback(PourOptics pour, Spectrum floorReflectance, int wavelength) =>
        floorReflectance[wavelength]
        / (1 - (floorReflectance[wavelength] * pour.WholeFloor.Floor[wavelength]));

    private static double CarriedPhotons(PourOptics pour, int layer)
    {
        double sum = 0;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            if (pour.GroupFluence[i] is not null)
            {
                sum += pour.Stack.Layers[layer].EmissionPerNm![i] * WavelengthGrid.NmAt(i);
            }
        }
        return sum;
    }

    private static double PhotonsPerJoule(Spectrum emissionPerNm)
    {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            sum += emissionPerNm[i] * Photon.PerJoule(WavelengthGrid.NmAt(i));
            weight += emissionPerNm[i];
        }
        return sum / weight;
    }

    private static void MeanOverGroups(PourOptics pour, ReadOnlySpan<double> cells, Span<double> groups)
    {
        groups.Clear();
        for (int c = 0; c < cells.Length; c++)
        {
            int group = pour.Grid.GroupOfCell[c];
            groups[group] += cells[c] * pour.Cells[c].WidthMm / pour.Grid.GroupWidthMm[group];
        }
    }

    private Spectrum EmissionOf(int cell) => pour.Stack.Layers[pour.Cells[cell].Layer].EmissionPerNm!;

    private double ShareOfGroup(int cell) =>
        pour.Cells[cell].WidthMm / pour.Grid.GroupWidthMm[pour.Grid.GroupOfCell[cell]];

    private double[] GroupMeans(double[] cells)
    {
        var groups = new double[pour.Grid.GroupCount];
        MeanOverGroups(pour, cells, groups);
        return groups;
    }
}
