namespace Evengrist.Milling.Sheet;

/// <summary>A mill unit as data: its passages, how they are set, and where each outlet leads. Page: docs/model/flow-sheet.md.</summary>
/// <param name="Name">What the unit is called.</param>
/// <param name="FirstBreak">Code of the passage that takes the wheat.</param>
/// <param name="Passages">The passages, in the order the mill lists them.</param>
/// <param name="Products">What leaves.</param>
/// <param name="TonnesPerDay">Wheat the unit is built for, t in 24 h; above 0, at most 5000. Null where it is not said.</param>
public sealed record FlowSheet(string Name, string FirstBreak, IReadOnlyList<Passage> Passages, IReadOnlyList<MillProduct> Products, double? TonnesPerDay = null)
{
    /// <summary>Most passages of one sheet [ours].</summary>
    public const int MostPassages = 200;

    /// <summary>Most characters of a code [ours].</summary>
    public const int LongestCode = 12;

    /// <summary>Every way from an outlet to a passage or product.</summary>
    public IEnumerable<(Passage From, int Outlet, Spout Spout)> Ways => Passages.SelectMany(p => p.Outlets.SelectMany((o, i) => o.Select(s => (p, i, s))));

    /// <summary>What is wrong, each a sentence that says where; empty where the sheet can be milled on.</summary>
    public IReadOnlyList<string> Faults() => FlowSheetCheck.Of(this);

    /// <summary>Passages that feed each other, each loop in the order of the sheet; a passage that feeds itself is a loop of one. Empty where no stock goes back.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Loops() => FlowOrder.Loops(this);
}
