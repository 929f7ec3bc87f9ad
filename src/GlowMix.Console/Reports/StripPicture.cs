using System.Xml.Linq;
using GlowMix.Colour;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>
/// The piece seen from above, five times: bare, potted and lit, then in the dark after 1, 10 and 60 minutes. Colours are
/// computed; size, packages and the shallow end are to scale.
/// </summary>
internal sealed class StripPicture
{
    private const double Width = 720;
    private const double LabelHeight = 22;
    private const double HighestFrame = 120;
    private const double LowestFrame = 12;
    private const double Gap = 11;
    private const double EndsHeight = 20;
    private const int MostPackages = 1000;
    private const string Luminance = "afterglow.luminance_mcd_m2";

    // Where the recipe does not tell a size: a strip of these proportions, without packages.
    private const double AnyLengthMm = 100;
    private const double AnyWidthMm = 4;

    // A board beside its LEDs: bright enough to be seen, dark enough that they stand out.
    private const double BoardShare = 0.1;

    private static readonly double[] darkMinutes = [1, 10, 60];

    private readonly RecipeReport report;
    private readonly FigureValues figures;
    private readonly double lengthMm;
    private readonly double widthMm;
    private readonly double mmToDrawing;
    private readonly string shades;

    /// <summary>What is to be known about the colours of every such picture.</summary>
    public const string OfScreens =
        "A screen's white is daylight: warm light looks more orange here than in its own room.";

    /// <param name="report">The recipe.</param>
    /// <param name="number">Which of the page's recipes: names of shades must differ.</param>
    public StripPicture(RecipeReport report, int number)
    {
        this.report = report;
        figures = report.Prediction.Figures;
        (lengthMm, widthMm) = (report.Piece.LengthMm ?? AnyLengthMm, report.Piece.WidthMm ?? AnyWidthMm);
        if (widthMm > lengthMm)
        {
            (lengthMm, widthMm) = (widthMm, lengthMm);
        }
        mmToDrawing = Math.Min(Width / lengthMm, HighestFrame / widthMm);
        shades = $"strip{number}";
    }

    private double FrameLength => lengthMm * mmToDrawing;

    private double FrameHeight => Math.Max(LowestFrame, widthMm * mmToDrawing);

    private bool Glows => report.Prediction.Decay is not null;

    private bool RunsOut => report.Prediction.Along.Count > 0;

    /// <summary>The picture with its words and numbers.</summary>
    public Illustration Illustration
    {
        get
        {
            var frames = Frames();
            double height = (frames.Count * (LabelHeight + FrameHeight + Gap)) + EndsHeight;
            var parts = new List<object?> { Shades() };
            for (int i = 0; i < frames.Count; i++)
            {
                double label = i * (LabelHeight + FrameHeight + Gap);
                double y = label + LabelHeight;
                parts.Add(Label(frames[i], y - 6));
                parts.Add(Drawing.Box(0, y, FrameLength, FrameHeight, Markup.With("fill", frames[i].Fill)));
                if (frames[i].Packages is { } packages)
                {
                    parts.AddRange(Packages(y, packages));
                }
                parts.Add(Drawing.Box(0, y, FrameLength, FrameHeight, Markup.With("class", "outline")));
            }
            parts.AddRange(Ends(height - EndsHeight));
            return new(
                Drawing.Of(Width, height, "The piece from above", InWords(frames), "strip", [.. parts]),
                Caption(),
                ["frame", "what it shows"],
                [.. frames.Select(f => new[] { f.Name, f.Words })]
            );
        }
    }

    private List<Frame> Frames()
    {
        string bare = White(figures["bare.x"], figures["bare.y"])?.Hex() ?? "#000000";
        var lit = White(figures["lit.x"], figures["lit.y"]);
        var frames = new List<Frame>
        {
            new(
                "bare",
                figures["bare.cct_k"] is double k ? $"{Digits.Cct(k)} K" : "",
                White(figures["bare.x"], figures["bare.y"])?.Dimmed(BoardShare).Hex() ?? "#000000",
                new(bare, 1)
            ),
            new(
                "potted, lit",
                LitWords(),
                lit is null ? "#000000" : $"url(#{shades}-lit)",
                PackagesUnderResin(bare)
            ),
        };
        if (Glows)
        {
            frames.AddRange(
                darkMinutes.Select(minutes => new Frame(
                    $"dark, {Digits.Plain(minutes)} min",
                    GlowWords(minutes),
                    $"url(#{shades}-dark{Digits.Plain(minutes)})",
                    null
                ))
            );
        }
        else
        {
            frames.Add(new("dark", "no glow", "#000000", null));
        }
        return frames;
    }

    private string LitWords() =>
        figures["lit.cct_k"] is double k ? $"{Digits.Cct(k)} K, {Tint.InWords(figures["lit.duv"] ?? 0)}"
        : figures["lit.x"] is double x && figures["lit.y"] is double y ? HueWord.Of(x, y)
        : "no light";

    private string GlowWords(double minutes)
    {
        var band = report.Prediction.BandOf(FigureCatalogue.AtMinutes(Luminance, minutes));
        return Digits.Two(band.Low) == Digits.Two(band.High)
            ? $"{Digits.Two(band.Likely)} mcd/m²"
            : $"{Digits.Two(band.Low)} to {Digits.Two(band.High)} mcd/m²";
    }

    // Packages out of the resin look as bare; under it only where they show as dots.
    private PackageLooks? PackagesUnderResin(string bare) =>
        report.Prediction.DepthOverPackagesMm <= 0 ? new(bare, 1)
        : report.Prediction.Warnings.Any(w => w.Code == "dots") ? new("#ffffff", 0.55)
        : null;

    private XElement Shades()
    {
        var shade = Markup.Of("defs", Along($"{shades}-lit", LitAt));
        if (Glows)
        {
            foreach (double minutes in darkMinutes)
            {
                shade.Add(Along($"{shades}-dark{Digits.Plain(minutes)}", at => GlowAt(minutes, at)));
            }
        }
        return shade;
    }

    /// <summary>A course of colour from the shallow end to the deep one.</summary>
    private static XElement Along(string name, Func<int, string> colourAt) =>
        Markup.Of(
            "linearGradient",
            Markup.With("id", name),
            Enumerable
                .Range(0, 3)
                .Select(place =>
                    Markup.Of(
                        "stop",
                        Markup.With("offset", place / 2.0),
                        Markup.With("stop-color", colourAt(place))
                    )
                )
                .ToArray()
        );

    private string LitAt(int place) =>
        (ColourAt(place) ?? new(0, 0, 0, true)).Dimmed(RelativeAt(place, p => p.FluxLm)).Hex();

    // A pour that runs out of level is another white at each end.
    private ScreenColour? ColourAt(int place) =>
        RunsOut && report.Prediction.Along[place].Chromaticity is { } there
            ? ScreenColour.Of(there)
            : White(figures["lit.x"], figures["lit.y"]);

    private string GlowAt(double minutes, int place)
    {
        double brightest = figures[FigureCatalogue.AtMinutes(Luminance, darkMinutes[0])] ?? 0;
        double glow = figures[FigureCatalogue.AtMinutes(Luminance, minutes)] ?? 0;
        return brightest <= 0 || White(figures["afterglow.x"], figures["afterglow.y"]) is not { } colour
            ? "#000000"
            : colour.Dimmed(glow / brightest * RelativeAt(place, p => p.LuminanceAt10MinMcdPerM2)).Hex();
    }

    // Against the brightest of the three places, so that none is brighter than a screen can be.
    private double RelativeAt(int place, Func<AlongPlace, double?> figure)
    {
        var along = report.Prediction.Along;
        double most = along.Count == 3 ? along.Max(p => figure(p) ?? 0) : 0;
        return most > 0 ? (figure(along[place]) ?? 0) / most : 1;
    }

    // One line, so that the words follow the name in letters of any size.
    private static XElement Label(Frame frame, double foot) =>
        Markup.Of(
            "text",
            Markup.With("x", 0),
            Markup.With("y", foot),
            Markup.Of("tspan", Markup.With("class", "strong"), frame.Name),
            Markup.Of("tspan", Markup.With("dx", "0.8em"), frame.Words)
        );

    private IEnumerable<XElement> Packages(double y, PackageLooks looks)
    {
        if (report.Piece.Count is not int count || !report.Piece.HasSize || count > MostPackages)
        {
            yield break;
        }
        double length = report.Piece.Led.PackageLengthMm.Value * mmToDrawing;
        double width = report.Piece.Led.PackageWidthMm.Value * mmToDrawing;
        foreach (var (xMm, yMm) in LedPlaces.Of(count, lengthMm, widthMm))
        {
            yield return Drawing.Box(
                (xMm * mmToDrawing) - (length / 2),
                y + (yMm * mmToDrawing) - (width / 2),
                length,
                width,
                Markup.With("fill", looks.Colour),
                looks.Opacity < 1 ? Markup.With("fill-opacity", looks.Opacity) : null
            );
        }
    }

    private IEnumerable<XElement> Ends(double y)
    {
        string size = report.Piece.HasSize
            ? $"{Digits.Plain(lengthMm)} × {Digits.Plain(widthMm)} mm"
            : "not to scale: the recipe tells no number or size";
        double foot = y + 10;
        if (RunsOut)
        {
            yield return Drawing.Letters(0, foot, "shallow end");
            yield return Drawing.Letters(FrameLength, foot, "deep end", "end");
        }
        yield return Drawing.Letters(FrameLength / 2, foot, size, "middle");
    }

    private string Caption()
    {
        string packages = report.Piece.HasSize
            ? "Packages to scale, spread evenly: the recipe does not tell where they stand. "
            : "";
        string dark = figures[FigureCatalogue.AtMinutes(Luminance, darkMinutes[0])] is > 0
            ? $"Likely glow; the dark frames are brightened {Brightened()}, all by the same: no screen can show them as dark as they are. "
            : "";
        string gamut =
            White(figures["lit.x"], figures["lit.y"]) is { IsInGamut: false }
            || (Glows && White(figures["afterglow.x"], figures["afterglow.y"]) is { IsInGamut: false })
                ? "A colour more saturated than screens have is shown by the nearest that they have."
                : "";
        return $"{packages}{dark}{gamut}".TrimEnd();
    }

    /// <summary>How much brighter than true the dark frames are, beside the lit one: '× 12000'.</summary>
    private string Brightened()
    {
        double litMcdPerM2 =
            1e3
            * Photometry.PhotopicLm(report.Prediction.Spectra.LitWPerNm)
            / (report.Piece.Count ?? 1)
            / (Math.PI * 1e-6 * report.Piece.AreaPerPackageMm2);
        double dark = figures[FigureCatalogue.AtMinutes(Luminance, darkMinutes[0])] ?? 0;
        return dark > 0 && litMcdPerM2 > dark
            ? $"× {Digits.Significant(litMcdPerM2 / dark, 2)} against the lit one"
            : "far against the lit one";
    }

    private static string InWords(List<Frame> frames) =>
        string.Join("; ", frames.Select(f => f.Words.Length > 0 ? $"{f.Name}: {f.Words}" : f.Name));

    private static ScreenColour? White(double? x, double? y) =>
        x is double atX && y is double atY ? ScreenColour.Of(Chromaticity.FromXy(atX, atY)) : null;

    private sealed record Frame(string Name, string Words, string Fill, PackageLooks? Packages);

    private sealed record PackageLooks(string Colour, double Opacity);
}
