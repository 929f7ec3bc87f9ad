using System.Globalization;
using System.Text;
using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Spectra;
using GlowMix.Tests.Materials;

namespace GlowMix.Tests.Predictions;

/// <summary>What belongs into data/derived, worked out anew.</summary>
internal static class DerivedFiles
{
    private static readonly Shelf Shelf = new();

    /// <summary>The repository's folder data/derived.</summary>
    public static string Folder { get; } = Path.Combine(Top(), "data", "derived");

    /// <summary>Each pigment of the shelf at its own grain in each resin of the shelf, then what the shipped recipes take.</summary>
    public static IReadOnlyDictionary<string, GrainFile> Grains { get; } = AllGrains();

    /// <summary>The sheet of each pigment of the shelf.</summary>
    public static IReadOnlyDictionary<string, LadderFile> Ladders { get; } = AllLadders();

    private static Dictionary<string, GrainFile> AllGrains()
    {
        var files = new Dictionary<string, GrainFile>();
        foreach (var pigment in Pigments())
        {
            foreach (string name in Shelf.ShippedNames(MaterialKind.Resin))
            {
                Add(
                    new(
                        pigment,
                        Shelf.Resin(name).Material!,
                        pigment.GrainMedianUm.Value,
                        pigment.GrainGsd.Value
                    )
                );
            }
        }
        foreach (
            string path in Directory
                .GetFiles(Path.Combine(Top(), "recipes"), "*.yaml")
                .Where(f => !f.EndsWith(".figures.yaml", StringComparison.Ordinal))
                .Order()
        )
        {
            var recipe = RecipeDocument.Read(File.ReadAllText(path), path);
            var beside = new InMemoryMaterials([
                .. Directory
                    .GetFiles(Path.GetDirectoryName(path)!, "*.csv")
                    .Select(f => (Path.GetFileName(f), File.ReadAllText(f))),
            ]);
            if (PieceAssembly.Of(recipe, Shelf, beside).Piece is { } piece)
            {
                foreach (var layer in piece.Layers.Where(l => l.HasPigment))
                {
                    Add(new(layer.Pigment!, piece.Resin, layer.GrainMedianUm, layer.GrainGsd));
                }
            }
        }
        return files;

        void Add(GrainFile file) => files.TryAdd(file.Key, file);
    }

    private static Dictionary<string, LadderFile> AllLadders()
    {
        var sheets = new PigmentSheets(Shelf, new OpticsShelf(readsDerived: false));
        return Pigments()
            .Select(pigment => new LadderFile(sheets.SampleOf(pigment).Sample!, sheets))
            .DistinctBy(file => file.Key)
            .ToDictionary(file => file.Key);
    }

    private static IEnumerable<Pigment> Pigments() =>
        Shelf.ShippedNames(MaterialKind.Pigment).Select(name => Shelf.Pigment(name).Material!);

    private static string Top()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "GlowMix.sln")))
        {
            folder =
                folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        }
        return folder.FullName;
    }

    private static string Line(params IEnumerable<object> cells) =>
        string.Join(',', cells.Select(cell => Convert.ToString(cell, CultureInfo.InvariantCulture))) + "\n";

    /// <summary>One file of data/derived/grains.</summary>
    internal sealed record GrainFile(Pigment Pigment, Resin Resin, double MedianUm, double Gsd)
    {
        private readonly int highestMoment = new ResinOptics(
            Resin.RefractiveIndex.Value,
            Resin.AbsorptionPerMm.Value
        ).HighestMoment;

        public string Key => DerivedGrains.KeyOf(Pigment, Resin, MedianUm, Gsd, highestMoment);

        public ClassedGrains? Shipped => DerivedGrains.Find(Pigment, Resin, MedianUm, Gsd, highestMoment);

        public ClassedGrains WorkedOut() =>
            new OpticsShelf(readsDerived: false).GrainsOf(Pigment, Resin, MedianUm, Gsd);

        public string Text()
        {
            var text = new StringBuilder();
            text.Append(
                CultureInfo.InvariantCulture,
                $"# {Pigment.Name} in {Resin.Name}: median {MedianUm} µm by mass, geometric standard deviation {Gsd:0.####}\n"
            );
            text.Append("class,wavelength_nm,absorption_per_mm,scattering_per_mm");
            for (int l = 1; l <= highestMoment; l++)
            {
                text.Append(CultureInfo.InvariantCulture, $",moment_{l}");
            }
            text.Append('\n');
            var classes = WorkedOut().Classes;
            for (int c = 0; c < classes.Length; c++)
            {
                var table = classes[c];
                for (int i = 0; i < WavelengthGrid.Count; i++)
                {
                    text.Append(
                        CultureInfo.InvariantCulture,
                        $"{c + 1},{WavelengthGrid.NmAt(i)},{table.AbsorptionPerMm[i]:G12},{table.ScatteringPerMm[i]:G12}"
                    );
                    foreach (double moment in table.Moments(i).Span[1..])
                    {
                        text.Append(CultureInfo.InvariantCulture, $",{moment:G12}");
                    }
                    text.Append('\n');
                }
            }
            return text.ToString();
        }
    }

    /// <summary>One file of data/derived/ladders.</summary>
    internal sealed record LadderFile(SheetSample Sample, PigmentSheets Sheets)
    {
        public string Key => DerivedLadders.KeyOf(Sample);

        public IReadOnlyList<(Variation Variation, LadderFitResult Fit)> Shipped =>
            DerivedLadders.Find(Sample, LadderShelf.ConstantsOf(Sample.Pigment));

        /// <summary>Fits of all runs that bound the doubt; those that are refused are left out.</summary>
        public IReadOnlyList<(Variation Variation, LadderFitResult Fit)> WorkedOut() =>
            [
                .. from factor in Variation.AbsorptionFactors
                let sheet = Sheets.Solve(Sample, factor)
                from smoothing in Variation.Smoothings
                let variation = new Variation(factor, smoothing)
                let fit = LadderShelf.FitTo(sheet, Sample.Pigment, variation)
                where fit.Ladder is not null
                select (variation, fit),
            ];

        public string Text()
        {
            var points = Sample.Pigment.Sheet.Points.Value;
            var text = new StringBuilder($"# {Sample.Pigment.Name}\n");
            text.Append(
                Line([
                    "absorption_factor",
                    "smoothing",
                    "trapping_efficiency",
                    .. Enumerable.Range(1, TrapLadder.RungCount).Select(k => $"rung_{k}_per_mm3"),
                    .. Enumerable.Range(1, points.Length).Select(i => $"residual_{i}_percent"),
                ])
            );
            foreach (var (variation, fit) in WorkedOut())
            {
                text.Append(
                    Line([
                        variation.PigmentAbsorptionFactor,
                        variation.LadderSmoothing,
                        fit.Ladder!.TrappingEfficiencyAt20C,
                        .. fit.Ladder.TrapsPerMm3.ToArray().Cast<object>(),
                        .. fit.ResidualsPercent.Cast<object>(),
                    ])
                );
            }
            return text.ToString();
        }
    }
}
