using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Recipes;

namespace GlowMix.Pieces;

/// <summary>Looks a recipe's materials up and fills in what it leaves open.</summary>
public sealed class PieceAssembly
{
    /// <summary>In light and in darkness, where the recipe tells none.</summary>
    internal const double DefaultTemperatureC = 20;

    private const double DefaultLimitMcdPerM2 = 0.3;
    private const double DefaultMixingTemperatureC = 23;
    private const double DefaultWastePercent = 10;
    private const double DefaultVacuumMin = 15;
    private const double DensestVolumeFraction = 0.64;
    private const string DefaultBoard = "white-mask";

    private readonly Recipe recipe;
    private readonly Shelf shelf;
    private readonly IMaterialSource? files;
    private readonly AssemblyNotes notes;
    private readonly List<Material> used = [];
    private Calibration? calibration;

    private PieceAssembly(Recipe recipe, Shelf shelf, IMaterialSource? files)
    {
        this.recipe = recipe;
        this.shelf = shelf;
        this.files = files;
        notes = new AssemblyNotes(recipe);
    }

    /// <summary>Puts a piece together.</summary>
    /// <param name="document">A recipe; one with errors gives no piece.</param>
    /// <param name="shelf">Where materials are looked up.</param>
    /// <param name="files">Where paths in the recipe lead, such as an LED's spectrum; null if nowhere.</param>
    public static PieceReading Of(RecipeDocument document, Shelf shelf, IMaterialSource? files = null)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(shelf);
        if (document.Recipe is not { } recipe)
        {
            return new(null, document.Problems);
        }
        return Of(recipe, document.Problems, shelf, files);
    }

    /// <summary>Puts a piece together from a recipe that somebody has changed.</summary>
    /// <param name="recipe">A recipe without errors.</param>
    /// <param name="found">Problems found in its text.</param>
    /// <param name="shelf">Where materials are looked up.</param>
    /// <param name="files">Where paths in the recipe lead; null if nowhere.</param>
    internal static PieceReading Of(
        Recipe recipe,
        IEnumerable<Problem> found,
        Shelf shelf,
        IMaterialSource? files
    )
    {
        var assembly = new PieceAssembly(recipe, shelf, files);
        assembly.notes.OfRecipe(found);
        var piece = assembly.Build();
        return new(assembly.notes.HasErrors ? null : piece, [.. assembly.notes.Problems]);
    }

    private Piece? Build()
    {
        calibration = CalibrationOf(recipe.CalibrationPath);
        var resin = notes.Take(shelf.Resin(recipe.ResinName), "resin");
        resin = resin is null ? null : Calibrated(resin, r => calibration?.Of(r) ?? r);
        var led = LedOf(recipe.Led.Source);
        led = led is null ? null : Calibrated(led, l => calibration?.Of(l) ?? l);
        var board = notes.Take(shelf.Board(recipe.BoardName ?? DefaultBoard), "board.material");
        notes.Note(recipe.BoardName is null, "white board");
        for (int i = 0; i < recipe.CriteriaNames.Length; i++)
        {
            notes.Take(shelf.Criterion(recipe.CriteriaNames[i]), $"criteria.{i + 1}");
        }

        double? drive = led is null ? null : DriveOf(led);
        CheckRoom(led);
        var layers = recipe.Layers.Select(layer => LayerOf(layer, resin)).ToImmutableArray();
        CheckCalibration();
        bool glows = layers.Any(l => l?.HasPigment == true);
        var steps = new ChargeAssembly(recipe, shelf, notes).StepsOf(glows);
        notes.Note(glows && recipe.Pour.Face is null, "face up while it gels");
        notes.Note(glows && recipe.Darkness.LimitMcdPerM2 is null, "limit 0.3 mcd/m²");
        notes.Note(
            recipe.Mixing.TemperatureC is null,
            $"mixed at {PieceTexts.Number(DefaultMixingTemperatureC)} °C"
        );
        notes.Note(recipe.Mixing.VacuumMin is null, $"{PieceTexts.Number(DefaultVacuumMin)} min of vacuum");
        notes.Note(
            recipe.Mixing.WastePercent is null && recipe.Pour is { LengthMm: not null, WidthMm: not null },
            $"{PieceTexts.Number(DefaultWastePercent)} % waste"
        );
        notes.Note(
            recipe.Led.Count is null || recipe.Pour.LengthMm is null || recipe.Pour.WidthMm is null,
            "LED windows 5 % of the board (assumed)"
        );

        return
            resin is null
            || led is null
            || board is null
            || drive is null
            || steps is null
            || layers.Any(l => l is null)
            ? null
            : new Piece
            {
                Recipe = recipe,
                Resin = resin,
                Led = led,
                DriveMa = drive.Value,
                Board = board,
                Count = recipe.Led.Count,
                LengthMm = recipe.Pour.LengthMm,
                WidthMm = recipe.Pour.WidthMm,
                Layers = [.. layers.Select(l => l!)],
                IsFaceUp = recipe.Pour.Face != Face.Down,
                Start = recipe.Charge.Start ?? ChargeStart.Empty,
                Steps = steps.Value,
                DarknessTemperatureC = recipe.Darkness.TemperatureC ?? DefaultTemperatureC,
                LimitMcdPerM2 = recipe.Darkness.LimitMcdPerM2 ?? DefaultLimitMcdPerM2,
                MixingTemperatureC = recipe.Mixing.TemperatureC ?? DefaultMixingTemperatureC,
                WastePercent = recipe.Mixing.WastePercent ?? DefaultWastePercent,
                VacuumMin = recipe.Mixing.VacuumMin ?? DefaultVacuumMin,
                Calibration = calibration,
                TakenAs = [.. notes.TakenAs],
            };
    }

    private Calibration? CalibrationOf(string? path)
    {
        if (path is null)
        {
            return null;
        }
        var file = shelf.Calibration(path);
        notes.OfMaterials(file.Problems);
        return file.Calibration;
    }

    private T Calibrated<T>(T material, Func<T, T> copy)
        where T : Material
    {
        var calibrated = copy(material);
        if (!ReferenceEquals(calibrated, material) && !used.Contains(material))
        {
            used.Add(material);
        }
        return calibrated;
    }

    // A calibration for another piece changes nothing here, and one of materials that have changed since is not theirs any more.
    private void CheckCalibration()
    {
        foreach (var told in calibration?.Materials ?? [])
        {
            var material = used.Find(m => m.Name == told.Material);
            string? warning =
                material is null ? PieceTexts.CalibratesOthers(told.Material)
                : told.MaterialSha256 is { } hash && Sha256.Of(material) != hash
                    ? PieceTexts.ChangedSinceCalibration(told.Material)
                : null;
            if (warning is not null)
            {
                notes.Warn("calibration", warning);
            }
        }
    }

    private Led? LedOf(LedSource source)
    {
        if (source is LedByName named)
        {
            return notes.Take(shelf.Led(named.MaterialName), "led.material");
        }
        var (led, keyPath, problem, ofFile) = shelf.Once(
            (source, files),
            () => LedWithoutFile.Of(source, shelf, files)
        );
        notes.OfMaterials(ofFile);
        if (problem is not null)
        {
            notes.Error(keyPath, problem);
        }
        return led;
    }

    private double? DriveOf(Led led)
    {
        double drive = recipe.Led.DriveMa ?? led.AtMa.Value;
        notes.Note(recipe.Led.DriveMa is null, "LEDs at rated current");
        if (drive > led.MaxMa.Value)
        {
            notes.Error("led.drive_ma", PieceTexts.OverDriven(drive, led.Name, led.MaxMa.Value));
            return null;
        }
        return drive;
    }

    private void CheckRoom(Led? led)
    {
        if (
            led is null
            || recipe.Led.Count is not int count
            || recipe.Pour.LengthMm is not double length
            || recipe.Pour.WidthMm is not double width
        )
        {
            return;
        }
        double packages = count * led.PackageLengthMm.Value * led.PackageWidthMm.Value;
        if (packages >= length * width)
        {
            notes.Error(
                "led.count",
                PieceTexts.PackagesDoNotFit(
                    count,
                    led.PackageLengthMm.Value,
                    led.PackageWidthMm.Value,
                    length * width
                )
            );
        }
    }

    private PieceLayer? LayerOf(RecipeLayer layer, Resin? resin)
    {
        if (layer.PigmentName is null)
        {
            return new(layer.Name, layer.DepthMm, null, 0, 0, 0, 1);
        }
        var pigment = notes.Take(shelf.Pigment(layer.PigmentName), $"layers.{layer.Name}.pigment");
        pigment = pigment is null ? null : Calibrated(pigment, p => calibration?.Of(p) ?? p);
        if (pigment is null || resin is null)
        {
            return null;
        }
        if (pigment.DensityGPerCm3.Value <= resin.DensityMixGPerCm3.Value)
        {
            notes.Error($"layers.{layer.Name}.pigment", PieceTexts.PigmentFloats(pigment.Name, resin.Name));
            return null;
        }
        double loading = layer.LoadingPercent ?? 0;
        double phi = PieceChange.VolumeFractionOf(loading, pigment, resin);
        if (phi > DensestVolumeFraction)
        {
            notes.Error($"layers.{layer.Name}.loading_percent", PieceTexts.TooDense(100 * phi));
            return null;
        }
        double median = layer.GrainMedianUm ?? pigment.GrainMedianUm.Value;
        notes.Note(layer.GrainMedianUm is null, $"grain {PieceTexts.Number(median)} µm");
        return new(
            layer.Name,
            layer.DepthMm,
            pigment,
            loading,
            phi,
            median,
            layer.GrainGsd ?? pigment.GrainGsd.Value
        );
    }
}
