namespace Evengrist.Milling.Solving;

/// <summary>A mill that is solved again and again as its settings are turned, each time from the stock of the time before. Not for several threads at once.</summary>
/// <param name="model">The mill.</param>
public sealed class MillRun(MillModel model)
{
    private readonly MillState state = model.State();
    private MillState? scratch;
    private double[] broken = [];
    private (double Severity, double Gap) brokenAt = (double.NaN, double.NaN);

    /// <summary>The mill.</summary>
    public MillModel Model { get; } = model;

    /// <summary>Its settings.</summary>
    internal MillKnobs Knobs { get; set; } = model.Knobs();

    /// <summary>Its stock.</summary>
    internal MillState State => state;

    /// <summary>Room to try a passage in without touching the stock.</summary>
    internal MillState Scratch => scratch ??= Model.State();

    /// <summary>Wheat behind the rolls of first break at some settings.</summary>
    internal double[] BrokenAt(MillKnobs knobs) => brokenAt == (knobs.FirstBreak, knobs.Nip[Model.Ways.First]) ? broken : Model.Broken(knobs);

    /// <summary>Tears a cloth.</summary>
    /// <param name="passage">Code of the passage.</param>
    /// <param name="outlet">Outlet of the cloth, from 0: what air lifts first, then each cloth's.</param>
    /// <param name="share">Share of what would stay over it that falls through, 0 to 1.</param>
    /// <exception cref="ArgumentException">There is no such passage.</exception>
    public void Tear(string passage, int outlet, double share)
    {
        var p = Array.FindIndex(Model.Ways.Passages, x => x.Code == passage);
        Knobs.Tear[p >= 0 ? Model.Ways.FirstOutlet[p] + outlet : throw new ArgumentException($"There is no passage {passage} on the flow sheet.", nameof(passage))] = share;
    }

    /// <summary>Solves at the settings; allocates nothing unless first break was turned.</summary>
    public MillReport Solve()
    {
        var at = (Knobs.FirstBreak, Knobs.Nip[Model.Ways.First]);
        if (brokenAt != at)
        {
            (broken, brokenAt) = (Model.Broken(Knobs), at);
        }

        return MillSolver.Solve(Model, Knobs, state, broken);
    }

    /// <summary>Solves and reads every passage and product off.</summary>
    public MillSolution Read()
    {
        var report = Solve();
        return new MillReading(Model, Knobs, state).Of(report);
    }
}
