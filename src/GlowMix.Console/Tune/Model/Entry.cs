namespace GlowMix.Console.Tune.Model;

/// <summary>A text being typed.</summary>
/// <param name="Prompt">What is asked for; empty where the field says it.</param>
/// <param name="Text">So far.</param>
/// <param name="Refusal">Why it was not taken; empty if it has not been tried.</param>
internal sealed record Entry(string Prompt, string Text, string Refusal = "")
{
    private const int MostSigns = 200;

    /// <summary>The entry after a key; null if the key is none that writes.</summary>
    public Entry? After(Stroke stroke) =>
        stroke switch
        {
            { Key: StrokeKey.Sign, Ctrl: false } when Text.Length < MostSigns => this with
            {
                Text = Text + stroke.Sign,
                Refusal = "",
            },
            { Key: StrokeKey.Backspace } => this with
            {
                Text = Text.Length > 0 ? Text[..^1] : "",
                Refusal = "",
            },
            _ => null,
        };
}
