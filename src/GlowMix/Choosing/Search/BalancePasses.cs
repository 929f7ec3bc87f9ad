namespace GlowMix.Choosing.Search;

/// <summary>
/// The search in two passes: all designs with their grains evenly spread, which is quick; then, as grains settle, an even grid of
/// fewer designs, those that the first pass points to, and what lies around the best of both.
/// </summary>
/// <remarks>
/// Settling moves white and glow further than a front is long, so the first front alone would not do: its designs may miss targets,
/// and better ones lie beside it.
/// </remarks>
internal sealed class BalancePasses
{
    // Of the second grid: some two seconds.
    private const int MostOfGrid = 450;

    // The first pass only has to show where to look.
    private const int FinestOfSpread = SearchAxis.Stride / 2;

    private readonly SearchSpace space;
    private CancellationToken stop;

    /// <param name="space">Where to search.</param>
    /// <param name="solve">Predicts designs, with what settles or without; returns fewer when it is stopped.</param>
    public BalancePasses(
        SearchSpace space,
        Func<IReadOnlyList<Design>, bool, CancellationToken, IReadOnlyList<DesignResult>> solve
    )
    {
        this.space = space;
        Spread = new(space, designs => solve(designs, false, stop));
        Grid = space.Thinned(MostOfGrid);
        Settled = new(Grid, designs => solve(designs, true, stop));
    }

    /// <summary>The first pass, grains evenly spread.</summary>
    public BalanceSearch Spread { get; }

    /// <summary>The second, grains settled: what an answer is made of.</summary>
    public BalanceSearch Settled { get; }

    /// <summary>The space with the coarse grid of the second pass.</summary>
    public SearchSpace Grid { get; }

    /// <summary>False once a pass has been stopped.</summary>
    public bool IsComplete => Spread.IsComplete && Settled.IsComplete;

    /// <summary>Searches.</summary>
    /// <param name="stop">Ends it. Of a first pass that is stopped the best are still solved with what settles, and no more.</param>
    public void Run(CancellationToken stop)
    {
        this.stop = stop;
        Spread.Try([.. space.CoarseDesigns]);
        Spread.Refine(FinestOfSpread);
        var pointedTo = Spread.Centres().Select(r => r.Design);
        if (!Spread.IsComplete)
        {
            this.stop = CancellationToken.None;
            Settled.Try([.. pointedTo.Distinct().Order()]);
            return;
        }
        Settled.Try([.. Grid.CoarseDesigns.Concat(pointedTo).Distinct().Order()]);
        Settled.Refine();
    }
}
