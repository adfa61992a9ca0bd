using Evengrist.Ledger;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Imports;

/// <summary>What a whole file comes to: drafts ready for the ledger, and for each the row it came from.</summary>
/// <param name="Kind">What was read.</param>
/// <param name="Drafts">In the order in which they are to be recorded.</param>
/// <param name="Rows">For each draft the row it came from.</param>
/// <param name="Heading">The heading the rows stand under.</param>
public sealed record Batch(ImportKind Kind, IReadOnlyList<Draft> Drafts, IReadOnlyList<Row> Rows, Row Heading)
{
    /// <summary>The source the facts are recorded under: the same for every file of a kind, so that a file imported again under another name adds nothing.</summary>
    public string Source => SourceOf(Kind);

    /// <summary>Rows of the file that brought something.</summary>
    public int Lines => Rows.Select(r => r.Line).Distinct().Count();

    /// <summary>The source of the facts of a kind of file.</summary>
    public static string SourceOf(ImportKind kind) => $"{kind.ToString().ToLowerInvariant()} file";

    /// <summary>What the ledger refused, at the line and column of the file that it is about.</summary>
    public Fault Explain(LedgerRefusal refusal)
    {
        ArgumentNullException.ThrowIfNull(refusal);
        var index = BlameOf(refusal);
        if (index < 0)
        {
            return Fault.OfFile(refusal.Place ?? "", $"what the ledger can take. {refusal.Message}");
        }

        var row = Rows[index];
        var column = Enumerable.Range(0, row.Cells.Count).Where(i => refusal.Place is { } place && Names(row[i].Text, place)).Select(i => (int?)i).FirstOrDefault();
        return new Fault(row.Line, column + 1, column is { } c ? Heading[c].Text : "", Fault.Show(column is { } k ? row[k].Text : Of(Drafts[index])), $"what the ledger can take. {refusal.Message}");
    }

    /// <summary>The batch without what a line of the file brought.</summary>
    internal Batch Without(int line) => Only(Enumerable.Range(0, Drafts.Count).Where(i => Rows[i].Line != line).ToArray());

    /// <summary>The drafts at these positions alone.</summary>
    internal Batch Only(IReadOnlyList<int> positions) => this with { Drafts = positions.Select(i => Drafts[i]).ToArray(), Rows = positions.Select(i => Rows[i]).ToArray() };

    /// <summary>Position of the draft a refusal is about; where it names none (a balance), the last draft before its moment that could cause it; −1 where no draft could.</summary>
    internal int BlameOf(LedgerRefusal refusal)
    {
        if (refusal.Index >= 0 && refusal.Index < Drafts.Count)
        {
            return refusal.Index;
        }

        var blamed = -1;
        for (var i = 0; i < Drafts.Count; i++)
        {
            if (Drafts[i] is Move move && Same(refusal.Rule == LedgerRule.WouldOverdraw ? move.From : move.To, refusal.Place)
                && (refusal.At is not { } at || move.At <= at) && (blamed < 0 || ((Move)Drafts[blamed]).At <= move.At))
            {
                blamed = i;
            }
        }

        return blamed;
    }

    private static bool Names(string cell, string place) => cell.Split('|', StringSplitOptions.TrimEntries).Any(part => Same(part, place));

    private static bool Same(string a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static string Of(Draft draft) => draft switch
    {
        OpenPlace open => open.Code,
        Connect connect => $"{connect.From} to {connect.To}",
        Move move => $"{move.From} to {move.To}, {move.Mass}",
        Measure measure => $"{measure.What} on {measure.On}: {measure.Value} {measure.Unit}",
        Happen happen => $"{happen.Kind} on {happen.On}",
        _ => draft.Key,
    };
}
