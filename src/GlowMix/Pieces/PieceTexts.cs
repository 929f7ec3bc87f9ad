using System.Globalization;
using GlowMix.Spectra;

namespace GlowMix.Pieces;

/// <summary>Words for what only shows when a recipe meets its materials.</summary>
internal static class PieceTexts
{
    public static string OverDriven(double driveMa, string led, double maxMa) =>
        Say($"drive_ma is {driveMa}; allowed for {led}: above 0 to {maxMa} mA");

    public static string LuxOfADarkLamp(string lamp, double lmPerW) =>
        Say(
            $"illuminance_lx says nothing of {lamp}, which gives {lmPerW:0.###} lm/W; write irradiance_w_m2, measured over 340 to 780 nm"
        );

    public static string PackagesDoNotFit(int count, double lengthMm, double widthMm, double areaMm2) =>
        Say($"{count} packages of {lengthMm} × {widthMm} mm do not fit on {areaMm2:0} mm² of board");

    public static string TooDense(double volumePercent) =>
        Say(
            $"the loading makes {volumePercent:0} % of the volume pigment; allowed: up to 64 %, grains as dense as they pack"
        );

    public static string CalibratesOthers(string material) =>
        $"the calibration tells of {material}, which is not in this piece; that part is not used";

    public static string ChangedSinceCalibration(string material) =>
        $"{material} has changed since the calibration was fitted; fit again with 'glowmix fit'";

    public static string ShortSpectrum(TabulatedSpectrum table) =>
        Say(
            $"the spectrum reaches from {table.FirstNm:0.#} to {table.LastNm:0.#} nm; what an LED sends outside counts as nothing, and 400 to 700 nm are asked for"
        );

    public static string PigmentFloats(string pigment, string resin) =>
        $"{pigment} is no denser than {resin}; allowed: pigments that sink";

    public static string NoFiles(string path) =>
        $"'{path}' cannot be opened here: no folder of files was given";

    public static string CoarseSpectrum(double stepNm) =>
        Say(
            $"the spectrum has steps of up to {stepNm:0.#} nm and is interpolated to 5 nm; steps of 5 nm or less are asked for"
        );

    public static string Hours(double minutes) =>
        minutes < 120 || minutes % 30 != 0 ? Say($"{minutes} min") : Say($"{minutes / 60} h");

    public static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
