namespace GlowMix.Recipes;

/// <summary>How a recipe says which LED is meant: <see cref="LedByName"/>, <see cref="LedByLabel"/> or <see cref="LedBySpectrum"/>.</summary>
public abstract record LedSource
{
    private protected LedSource() { }
}
