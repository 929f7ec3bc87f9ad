using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Optics.Pour;

public class PigmentExcitationTests
{
    private static readonly Spectrum Light = Spectrum.FromNm(nm => 1e-6 * (1 + ((nm - 340) / 300)));
    private static readonly Spectrum Floor = Spectrum.FromNm(nm => nm < 400 ? 0.2 : 0.87);

    private static readonly PourOptics Piece = PourOptics.Of(
        SamplePours.Stack(0.7, SamplePours.Green(1.5), PourLayer.Clear(0.5), SamplePours.Blue(0.8)),
        withGlow: false
    );

    [Fact]
    public void A_photon_of_500_nm_has_2_4797_eV()
    {
        // h c = 1.239841984 eV µm, e = 1.602176634e-19 C (CODATA 2018).
        double joules = 1.239841984 / 0.5 * 1.602176634e-19;
        Assert.Equal(1, joules * Photon.PerJoule(500), tolerance: 1e-9);
    }

    [Fact]
    public void Photons_from_LEDs_add_up_to_those_the_closed_form_absorbs()
    {
        double closed = Total(i => Light[i] * Piece.OverPackages!.Pigment[i]);
        double inCells = InCells(PigmentExcitation.FromLeds(Piece, Light));
        Assert.Equal(closed, inCells, tolerance: 1e-9 * closed);
    }

    [Fact]
    public void Photons_from_the_sky_add_up_with_those_the_floor_sends_back()
    {
        // What the floor sends back meets the pour again and again: a series and not the closed form.
        double closed = Total(i =>
        {
            double onFloor = Piece.Sky.Floor[i];
            double absorbed = Piece.Sky.Pigment[i];
            for (int pass = 0; pass < 500; pass++)
            {
                double up = Floor[i] * onFloor;
                absorbed += up * Piece.WholeFloor.Pigment[i];
                onFloor = up * Piece.WholeFloor.Floor[i];
            }
            return Light[i] * absorbed;
        });
        double inCells = InCells(PigmentExcitation.FromSky(Piece, Light, Floor));
        Assert.Equal(closed, inCells, tolerance: 1e-9 * closed);
    }

    [Fact]
    public void Pigment_between_the_packages_counts_as_not_lit_by_them()
    {
        double[] rates = PigmentExcitation.FromLeds(Piece, Light);
        Assert.All(Piece.Cells.Zip(rates), cell => Assert.Equal(cell.First.OverPackages, cell.Second > 0));
    }

    [Fact]
    public void LEDs_in_air_excite_nothing()
    {
        var shallow = PourOptics.Of(SamplePours.Stack(0.7, SamplePours.Green(0.6)), withGlow: false);
        Assert.All(PigmentExcitation.FromLeds(shallow, Light), rate => Assert.Equal(0, rate));
        Assert.All(PigmentExcitation.FromSky(shallow, Light, Floor), rate => Assert.True(rate > 0));
    }

    [Fact]
    public void A_brighter_floor_gives_more_to_every_cell()
    {
        double[] black = PigmentExcitation.FromSky(Piece, Light, Spectrum.Zero);
        double[] white = PigmentExcitation.FromSky(Piece, Light, Floor);
        Assert.All(black.Zip(white), cell => Assert.True(cell.First < cell.Second));
    }

    [Fact]
    public void The_surface_shades_what_lies_below()
    {
        double[] rates = PigmentExcitation.FromSky(Piece, Light, Spectrum.Zero);
        double[] green = [.. rates.Where((_, c) => Piece.Cells[c].Layer == 0)];
        Assert.Equal(green.Order(), green);
    }

    private static double Total(Func<int, double> wPerMm2Nm) =>
        Enumerable
            .Range(0, WavelengthGrid.Count)
            .Sum(i => wPerMm2Nm(i) * WavelengthGrid.StepNm * Photon.PerJoule(WavelengthGrid.NmAt(i)));

    private static double InCells(double[] perSMm3) =>
        perSMm3
            .Select(
                (rate, c) =>
                    rate * Piece.Cells[c].WidthMm * Piece.Stack.Layers[Piece.Cells[c].Layer].VolumeFraction
            )
            .Sum();
}
