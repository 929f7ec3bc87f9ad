using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>
/// The cut through the pour, face up: board and packages below, resin and grains above. Lit, blue fades on its way up; dark, each
/// slice is as bright as its traps are full.
/// </summary>
internal sealed class CutPicture(PieceCut cut, Palette palette, bool dark, bool ascii)
{
    private const int GutterColumns = 5;
    private const int PackageColumns = 4;
    private const int PitchColumns = 12;

    // Denser and the eye sees a texture instead of grains; a settled bed comes near it.
    private const double MostGrains = 0.7;
    private const double VolumePercentOfAllCells = 25;

    /// <summary>Paints it.</summary>
    public void Paint(Leaf leaf, Area area)
    {
        int rows = area.Rows - 1;
        var field = new Area(area.X + GutterColumns, area.Y, area.Columns - GutterColumns, rows);
        if (rows < 2 || field.Columns < PitchColumns)
        {
            return;
        }
        for (int row = 0; row < rows; row++)
        {
            Row(leaf, field, row, cut.DepthMm * (rows - row - 1) / rows, cut.DepthMm * (rows - row) / rows);
        }
        Packages(leaf, field);
        Board(leaf, field);
        string shares = dark ? " traps full" : " blue left";
        leaf.PutRight(field.X + field.Columns, field.Y + field.Rows, shares, Text);
        Heights(leaf, area, rows);
        LayerNames(leaf, field);
        Shares(leaf, field);
    }

    private Look Text => dark ? palette.DarkFaint : palette.LitFaint;

    private void Row(Leaf leaf, Area field, int row, double fromMm, double toMm)
    {
        var (blue, filled, volumePercent) = Mean(fromMm, toMm);
        var look = dark ? palette.DarkResin(filled / 100) : palette.LitResin(blue);
        double grains = volumePercent / VolumePercentOfAllCells;
        for (int x = 0; x < field.Columns; x++)
        {
            bool isGrain = filled is not null && Scatter(x, row) < Math.Min(MostGrains, grains);
            leaf.Set(field.X + x, field.Y + row, LetterOf(isGrain, blue, filled), look);
        }
    }

    private char LetterOf(bool isGrain, double blue, double? filledPercent)
    {
        if (dark)
        {
            return !isGrain ? ' '
                : ascii
                    ? filledPercent switch
                    {
                        > 60 => '@',
                        > 25 => 'o',
                        _ => '.',
                    }
                : filledPercent switch
                {
                    > 60 => '●',
                    > 25 => '•',
                    _ => '·',
                };
        }
        if (palette.HasColour)
        {
            return isGrain ? (ascii ? '.' : '∙') : ' ';
        }
        return isGrain ? (ascii ? 'o' : '•')
            : blue > 0.7 ? (ascii ? '#' : '▓')
            : blue > 0.4 ? (ascii ? '+' : '▒')
            : blue > 0.15 ? (ascii ? ':' : '░')
            : ' ';
    }

    private void Packages(Leaf leaf, Area field)
    {
        if (cut.PackageHeightMm <= 0 || cut.DepthMm <= 0)
        {
            return;
        }
        int high = Math.Clamp((int)Math.Round(field.Rows * cut.PackageHeightMm / cut.DepthMm), 1, field.Rows);
        for (int x = PitchColumns / 2; x + PackageColumns <= field.Columns; x += PitchColumns)
        {
            for (int row = field.Rows - high; row < field.Rows; row++)
            {
                for (int i = 0; i < PackageColumns; i++)
                {
                    leaf.Set(
                        field.X + x + i,
                        field.Y + row,
                        palette.HasColour ? ' '
                            : ascii ? 'H'
                            : '█',
                        palette.Package(dark)
                    );
                }
            }
        }
    }

    private void Board(Leaf leaf, Area field)
    {
        for (int x = 0; x < field.Columns; x++)
        {
            leaf.Set(field.X + x, field.Y + field.Rows, ascii ? '=' : '▀', palette.Board(dark));
        }
    }

    // mm over the board at the top of each layer, and at the board.
    private void Heights(Leaf leaf, Area area, int rows)
    {
        double top = cut.DepthMm;
        int free = -1;
        foreach (var layer in cut.Layers.Reverse())
        {
            int row = (int)Math.Round((1 - (top / cut.DepthMm)) * rows);
            if (row > free)
            {
                leaf.PutRight(area.X + GutterColumns - 1, area.Y + row, Digits.Fixed(top, 1), Text);
                free = row;
            }
            top -= layer.DepthMm;
        }
        leaf.PutRight(area.X + GutterColumns - 1, area.Y + rows, "mm", Text);
    }

    private void LayerNames(Leaf leaf, Area field)
    {
        double top = cut.DepthMm;
        int free = 0;
        foreach (var layer in cut.Layers.Reverse())
        {
            int row = Math.Max(free, (int)Math.Round((1 - (top / cut.DepthMm)) * field.Rows));
            top -= layer.DepthMm;
            if (row >= field.Rows)
            {
                return;
            }
            string what = layer.Pigment is null ? "clear" : layer.Pigment;
            leaf.Put(
                field.X + 1,
                field.Y + row,
                $" {layer.Name}: {what} ",
                leaf.LookAt(field.X + 1, field.Y + row),
                field.Columns - 9
            );
            free = row + 1;
        }
    }

    // How much, in numbers too, for eyes and terminals that tell no shades apart.
    private void Shares(Leaf leaf, Area field)
    {
        int every = field.Rows > 8 ? 2 : 1;
        for (int row = 0; row < field.Rows; row += every)
        {
            var (blue, filled, _) = Mean(
                cut.DepthMm * (field.Rows - row - 1) / field.Rows,
                cut.DepthMm * (field.Rows - row) / field.Rows
            );
            double? percent =
                filled is null ? null
                : dark ? filled
                : 100 * blue;
            if (percent is double share)
            {
                int end = field.X + field.Columns;
                leaf.PutRight(
                    end,
                    field.Y + row,
                    $" {Digits.Percent(share)} ",
                    leaf.LookAt(end - 1, field.Y + row)
                );
            }
        }
    }

    // Of what pigment there is between two heights; without any no traps, and the light that clear resin passes on.
    private (double Blue, double? FilledPercent, double VolumePercent) Mean(double fromMm, double toMm)
    {
        double pigment = 0;
        double blue = 0;
        double filled = 0;
        foreach (var slice in cut.Slices)
        {
            double mm = Math.Min(toMm, slice.ToMm) - Math.Max(fromMm, slice.FromMm);
            if (mm > 0)
            {
                double part = mm * slice.PigmentVolumePercent;
                pigment += part;
                blue += part * slice.ChargingLight;
                filled += part * slice.FilledPercent;
            }
        }
        return pigment > 0
            ? (blue / pigment, filled / pigment, pigment / (toMm - fromMm))
            : (BlueInClear((fromMm + toMm) / 2), null, 0);
    }

    // Light rises from the packages' tops: clear resin has what the pigment below it lets through.
    private double BlueInClear(double heightMm)
    {
        double passed = 1;
        foreach (var slice in cut.Slices)
        {
            bool isOnTheWay = slice.FromMm >= cut.PackageHeightMm && slice.ToMm <= heightMm;
            passed = isOnTheWay ? slice.ChargingLight : passed;
        }
        return passed;
    }

    // The same grains in the same places at every turn, 0 to 1: the mixing steps of a small integer hash.
    private static double Scatter(int x, int y)
    {
        uint h = ((uint)x * 0x9E3779B1u) ^ ((uint)y * 0x85EBCA77u);
        h ^= h >> 15;
        h *= 0x2C1B3C6Du;
        h ^= h >> 12;
        return h / (double)uint.MaxValue;
    }
}
