using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>How the resin is mixed. Immutable.</summary>
public sealed record Mixing
{
    /// <summary>Pieces poured from one mix of each layer, 1 or more.</summary>
    public int Pieces
    {
        get;
        init =>
            field =
                value >= 1
                    ? value
                    : throw new ArgumentOutOfRangeException(
                        nameof(Pieces),
                        value,
                        "Pieces must be 1 or more."
                    );
    } = 1;

    /// <summary>Temperature of the room and the parts, °C.</summary>
    public double TemperatureC
    {
        get;
        init => field = Demand.TemperatureC(value, nameof(TemperatureC));
    } = 22;

    /// <summary>Mix made over and above what the pour takes, % of it.</summary>
    public double WastePercent
    {
        get;
        init => field = Demand.Within(value, 0, 1000, nameof(WastePercent), "%");
    } = 10;

    /// <summary>Time for weighing together and stirring, min. Assumed.</summary>
    public double StirringMin
    {
        get;
        init => field = Demand.NotNegative(value, nameof(StirringMin), "min");
    } = 5;

    /// <summary>Time under vacuum, min; 10 to 20 is common practice, no source.</summary>
    public double VacuumMin
    {
        get;
        init => field = Demand.NotNegative(value, nameof(VacuumMin), "min");
    } = 15;

    /// <summary>Price of mixed resin per kg; null if not told.</summary>
    public double? ResinPerKg
    {
        get;
        init =>
            field = value is double price ? Demand.NotNegative(price, nameof(ResinPerKg), "per kg") : null;
    }

    /// <summary>Price of pigment per kg; null if not told.</summary>
    public double? PigmentPerKg
    {
        get;
        init =>
            field = value is double price ? Demand.NotNegative(price, nameof(PigmentPerKg), "per kg") : null;
    }
}
