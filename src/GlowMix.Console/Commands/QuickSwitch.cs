using System.CommandLine;
using GlowMix.Choosing;

namespace GlowMix.Console.Commands;

/// <summary>The option that leaves the draws out, of commands that draw as often as predict.</summary>
internal static class QuickSwitch
{
    /// <param name="where">What the help says before it; may be empty.</param>
    public static Option<bool> Create(string where = "") =>
        new("--quick")
        {
            Description =
                $"{where}bands from a few bounding runs instead of {Forecaster.UsualDraws} draws: at once, and cruder",
        };
}
