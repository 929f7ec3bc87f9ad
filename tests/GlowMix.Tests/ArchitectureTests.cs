using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using GlowMix.Optics.Slab;
using GlowMix.Tests.Architecture;

namespace GlowMix.Tests;

/// <summary>Rules of the model's house. Each can fail: see the planted breaches.</summary>
public partial class ArchitectureTests
{
    private static readonly Assembly Model = typeof(SlabSolution).Assembly;
    private static readonly HashSet<string> ModelTypes =
    [
        .. Model
            .GetTypes()
            .Where(t => t.Namespace?.StartsWith("GlowMix.", StringComparison.Ordinal) == true && !t.IsNested)
            .Select(t => $"{t.Namespace!["GlowMix.".Length..]}.{t.Name.Split('`')[0]}"),
    ];

    private static readonly SourceFile[] Files = SourceFile.OfTheModel();

    [Fact]
    public void A_folder_knows_only_folders_before_it_on_the_path_of_the_light()
    {
        Assert.True(Files.Length > 100);
        Assert.Empty(PathOfLight.Breaches(Files, ModelTypes));
    }

    [Theory]
    [InlineData("Spectra/Planted.cs", "using GlowMix.Colour;", 1)]
    [InlineData(
        "Optics/Slab/Planted.cs",
        "using GlowMix.Spectra;\nusing static GlowMix.Optics.Pour.PourOptics;",
        2
    )]
    [InlineData("Optics/Grains/Planted.cs", "\n\nusing Pour = GlowMix.Optics.Slab.Medium;", 3)]
    [InlineData("Materials/Planted.cs", "\nvar r = new GlowMix.Predictions.Predictor();", 2)]
    [InlineData("Materials/Planted.cs", "\nvar r = global::GlowMix.Recipes.Recipe.Read(text);", 2)]
    [InlineData(
        "Materials/Planted.cs",
        "namespace GlowMix.Materials;\nvar r = Recipes.Recipe.Read(text);",
        2
    )]
    [InlineData("Optics/Planted.cs", "namespace GlowMix.Optics;\nvar m = Optics.Slab.Medium.Clear(1);", 2)]
    [InlineData("Markings/Planted.cs", "using GlowMix.Helpers;", 1)]
    [InlineData("Helpers/Planted.cs", "using GlowMix.Spectra;", 1)]
    public void A_planted_breach_is_found(string path, string text, int line)
    {
        var breach = Assert.Single(PathOfLight.Breaches([new SourceFile(path, text)], ModelTypes).Distinct());
        Assert.StartsWith($"src/GlowMix/{path}:{line}: ", breach, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Recipes/Allowed.cs", "using GlowMix.Materials;\nusing GlowMix.Spectra;\nusing System.Text;")]
    [InlineData(
        "Spectra/Allowed.cs",
        "// see GlowMix.Colour\nstring s = \"GlowMix.Colour\"; double x = Recipes.Count;"
    )]
    [InlineData("Optics/Pour/Allowed.cs", "namespace GlowMix.Optics.Pour;\nusing GlowMix.Optics.Slab;")]
    public void What_is_allowed_is_let_through(string path, string text) =>
        Assert.Empty(PathOfLight.Breaches([new SourceFile(path, text)], ModelTypes));

    [Fact]
    public void The_namespace_of_a_file_is_its_folder() =>
        Assert.Empty(
            Files
                .Where(f => f.Namespace() != f.Folder || PathOfLight.PlaceOf(f.Folder) < 0)
                .Select(f => f.Path)
        );

    /// <summary>Its types would be seen from every folder without a using.</summary>
    [Fact]
    public void The_root_namespace_is_empty() =>
        Assert.Empty(
            Model
                .GetTypes()
                .Where(t => t.Namespace is null or "GlowMix" && !IsCompilerMade(t))
                .Select(t => t.FullName)
        );

    /// <summary>The model is a library: what it says depends on what it is given.</summary>
    [Fact]
    public void The_model_has_no_console_no_clock_and_no_chance()
    {
        Assert.Empty(
            Files.SelectMany(f => f.Lines(Outside()).Select(l => $"src/GlowMix/{f.Path}:{l.Line}: {l.Found}"))
        );
    }

    [Theory]
    [InlineData("Console.WriteLine(x);")]
    [InlineData("System.Console.Error.Write(x);")]
    [InlineData("var t = DateTime.Now;")]
    [InlineData("var t = DateTimeOffset.UtcNow;")]
    [InlineData("var w = Stopwatch.StartNew();")]
    [InlineData("var t = TimeProvider.System;")]
    [InlineData("double x = Random.Shared.NextDouble();")]
    [InlineData("var r = new Random();")]
    [InlineData("var c = CultureInfo.CurrentCulture;")]
    [InlineData("Thread.CurrentThread.CurrentCulture = c;")]
    public void A_planted_console_or_clock_is_found(string line) =>
        Assert.NotEmpty(new SourceFile("Spectra/Planted.cs", line).Lines(Outside()));

    [Fact]
    public void The_model_has_no_state_that_one_caller_could_change_for_another() =>
        Assert.Empty(Model.GetTypes().SelectMany(MutableStatics));

    [Fact]
    public void Planted_state_is_found() =>
        Assert.Equal(
            ["Planted.counter", "Planted.<Setting>k__BackingField", "Planted.Kept"],
            MutableStatics(typeof(Planted))
        );

    /// <summary>Static fields that can be set, and those that hold a collection that grows.</summary>
    private static IEnumerable<string> MutableStatics(Type type)
    {
        if (IsCompilerMade(type))
        {
            return [];
        }
        const BindingFlags Statics =
            BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;
        return type.GetFields(Statics)
            .Where(f => !f.IsLiteral && !f.Name.StartsWith("<>", StringComparison.Ordinal))
            .Where(f => !f.IsInitOnly || Grows(f.GetValue(null)))
            .Select(f => $"{type.Name}.{f.Name}");

        static bool Grows(object? value) =>
            value is not (null or Array)
            && (
                value is IList { IsReadOnly: false }
                || value is IDictionary { IsReadOnly: false }
                || value
                    .GetType()
                    .GetInterfaces()
                    .Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(ISet<>))
                    && value.GetType().Namespace == typeof(HashSet<>).Namespace
            );
    }

    private static bool IsCompilerMade(Type type) =>
        type.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
        || type.Name.StartsWith('<')
        || type.DeclaringType is { } outer && IsCompilerMade(outer);

    [GeneratedRegex(
        @"(?<!\w)(Console\.\w+|DateTime(Offset)?\.(Now|UtcNow|Today)|Stopwatch|TimeProvider\.System|Environment\.TickCount\w*|Random\.Shared|new Random\(\)|Guid\.NewGuid|Current(UI)?Culture)(?!\w)"
    )]
    private static partial Regex Outside();

    private static class Planted
    {
        private static int counter;

        public static string Setting { get; set; } = "";

        public static readonly Dictionary<string, int> Kept = [];

        public static readonly double[] Table = [1, 2];

        public const int Constant = 3;

        public static int Count() => counter++;
    }
}
