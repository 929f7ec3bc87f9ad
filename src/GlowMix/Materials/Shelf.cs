using System.Collections.Concurrent;
using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Materials.Calibrations;

namespace GlowMix.Materials;

/// <summary>
/// All materials there are: the user's own files first, then those that travel with the program. A file is read when it is
/// asked for, and once. Safe to use from several threads.
/// </summary>
public sealed class Shelf
{
    private readonly IMaterialSource? own;
    private readonly ConcurrentDictionary<object, Lazy<object>> kept = new();
    private readonly Shelf? shipped;

    /// <summary>A shelf.</summary>
    /// <param name="own">The user's files, or null for those that travel along only.</param>
    public Shelf(IMaterialSource? own = null)
    {
        this.own = own;
        // What a file may be like is a shipped material, whatever the user calls his own.
        shipped = own is null ? null : new Shelf();
    }

    /// <summary>An LED by name or path.</summary>
    public Loaded<Led> Led(string name) =>
        Find<Led>(
            MaterialKind.Led,
            name,
            (reader, head, _) => LedReader.Read(reader, head, ShippedLeds),
            null
        );

    /// <summary>A resin by name or path.</summary>
    public Loaded<Resin> Resin(string name) =>
        Find(MaterialKind.Resin, name, ResinReader.Read, (shipped ?? this).Resin);

    /// <summary>A pigment by name or path.</summary>
    public Loaded<Pigment> Pigment(string name) =>
        Find(MaterialKind.Pigment, name, PigmentReader.Read, (shipped ?? this).Pigment);

    /// <summary>A board by name or path.</summary>
    public Loaded<Board> Board(string name) =>
        Find<Board>(MaterialKind.Board, name, (reader, head, _) => BoardReader.Read(reader, head), null);

    /// <summary>A lamp by name or path.</summary>
    public Loaded<Lamp> Lamp(string name) =>
        Find<Lamp>(MaterialKind.Lamp, name, (reader, head, _) => LampReader.Read(reader, head), null);

    /// <summary>A criterion by name or path.</summary>
    public Loaded<Criterion> Criterion(string name) =>
        Find<Criterion>(
            MaterialKind.Criterion,
            name,
            (reader, head, _) => CriterionReader.Read(reader, head),
            null
        );

    /// <summary>The user's calibration at a path, read when it is asked for, and once.</summary>
    public CalibrationFile Calibration(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Once(path, () => ReadCalibration(path));
    }

    /// <summary>A material of any kind by name or path, for lists.</summary>
    public Loaded<Material> Any(MaterialKind kind, string name) =>
        kind switch
        {
            MaterialKind.Led => AsMaterial(Led(name)),
            MaterialKind.Resin => AsMaterial(Resin(name)),
            MaterialKind.Pigment => AsMaterial(Pigment(name)),
            MaterialKind.Board => AsMaterial(Board(name)),
            MaterialKind.Lamp => AsMaterial(Lamp(name)),
            MaterialKind.Criterion => AsMaterial(Criterion(name)),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    /// <summary>All names of a kind, the user's and the shipped, each once, in alphabetical order.</summary>
    public ImmutableArray<string> Names(MaterialKind kind) =>
        [
            .. (own?.Names(kind) ?? [])
                .Concat(ShippedData.Names(kind))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Names of a kind that travel with the program, in alphabetical order.</summary>
    public static ImmutableArray<string> ShippedNames(MaterialKind kind) => ShippedData.Names(kind);

    /// <summary>All LEDs that travel with the program, to lean on where one has no file.</summary>
    public ImmutableArray<Led> ShippedLeds() =>
        [
            .. ShippedData
                .Names(MaterialKind.Led)
                .Select((shipped ?? this).Led)
                .Select(loaded => loaded.Material)
                .OfType<Led>(),
        ];

    /// <summary>What is read from a file, or takes a while to work out of materials, such as the LED of a label: once for equal keys.</summary>
    internal T Once<T>(object key, Func<T> work)
        where T : class => (T)kept.GetOrAdd(key, _ => new(work)).Value;

    private Loaded<T> Find<T>(
        MaterialKind kind,
        string name,
        MaterialFile.ReadEntries<T> read,
        MaterialFile.LookUp<T>? like
    )
        where T : Material
    {
        ArgumentNullException.ThrowIfNull(name);
        return Once((kind, name), () => Read(kind, name, read, like));
    }

    private Loaded<T> Read<T>(
        MaterialKind kind,
        string name,
        MaterialFile.ReadEntries<T> read,
        MaterialFile.LookUp<T>? like
    )
        where T : Material
    {
        if (name.EndsWith(".yaml", StringComparison.Ordinal))
        {
            return own is null
                ? new(null, [], MaterialProblemTexts.NoFiles(name))
                : MaterialFile.Read(own.Open(name), name, kind, isShipped: false, read, like);
        }
        var found = own?.Find(kind, name);
        bool isShipped = found is null;
        found ??= ShippedData.Find(kind, name);
        return found is null
            ? new(null, [], MaterialProblemTexts.NotOnTheShelf(name, kind, Names(kind)))
            : MaterialFile.Read(found, name, kind, isShipped, read, like);
    }

    private CalibrationFile ReadCalibration(string path) =>
        own is null
            ? new(null, [new Problem(path, null, CalibrationTexts.NoFiles(path))])
            : CalibrationFile.Read(own.Open(path));

    private static Loaded<Material> AsMaterial<T>(Loaded<T> loaded)
        where T : Material => new(loaded.Material, loaded.Problems, loaded.NotFound);
}
