using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/boards.</summary>
internal static class BoardReader
{
    // What the surface of a coat of index 1.5 sends back of diffuse light.
    private const double SurfaceAlone = 0.092;

    public static Board? Read(MaterialReader reader, MaterialHead head)
    {
        string? wetted = reader.Keys.OneOf("taken", "under resin", "in air");
        var reflectance = SpectrumReader.Read(
            reader,
            "reflectance",
            MaterialRanges.Share,
            table => table.LinearOnGrid()
        );
        if (wetted is null || reflectance is null)
        {
            return null;
        }
        bool isInAir = wetted == "in air";
        for (int i = 0; isInAir && i < WavelengthGrid.Count; i++)
        {
            if (reflectance.Value[i] < SurfaceAlone)
            {
                reader.Keys.Warning(
                    "reflectance",
                    MaterialProblemTexts.DarkerThanItsSurface(WavelengthGrid.NmAt(i))
                );
                break;
            }
        }
        return new()
        {
            Name = head.Name,
            Title = head.Title,
            Cautions = head.Cautions,
            Origin = head.Origin,
            Reflectance = reflectance,
            IsInAir = isInAir,
        };
    }
}
