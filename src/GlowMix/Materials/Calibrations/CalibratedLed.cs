using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Materials.Calibrations;

/// <summary>What readings told of an LED.</summary>
public sealed record CalibratedLed : CalibratedMaterial
{
    /// <summary>Keys of the return matrix's entries in a file, in the order of <see cref="ReturnEntries"/>.</summary>
    public static ImmutableArray<string> EntryKeys { get; } =
    ["die_into_die", "die_into_green", "die_into_red", "green_into_green", "green_into_red", "red_into_red"];

    /// <summary>The bare spectrum read, power per nm in any unit; null where no reading with known colour was there.</summary>
    public Spectrum? BareSpectrum { get; init; }

    /// <summary>Shares of die, green and red in it, as split; empty without a spectrum.</summary>
    public ImmutableArray<CalibratedNumber> Shares { get; init; } = [];

    /// <summary>Six entries of the return matrix; empty where nothing was told of it.</summary>
    public ImmutableArray<CalibratedNumber> ReturnEntries { get; init; } = [];

    /// <summary>Sum of the entries below the diagonal: all conversion of returned light; null without entries.</summary>
    public CalibratedNumber? Conversion { get; init; }

    /// <summary>The matrix; null without entries.</summary>
    public ReturnMatrix? Matrix =>
        ReturnEntries is [var dd, var dg, var dr, var gg, var gr, var rr]
            ? ReturnMatrix.From(dd.Value, dg.Value, dr.Value, gg.Value, gr.Value, rr.Value)
            : null;
}
