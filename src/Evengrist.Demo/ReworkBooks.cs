using Evengrist.Ledger;
using Evengrist.Packing.Rework;
using Evengrist.Records;
using Evengrist.Records.Packing.Rework;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The papers of rework: the mill's rules, and why each tote of the year was rework. All invented; no movement is theirs.</summary>
public static class ReworkBooks
{
    private const string Lab = "Femi Strand";

    /// <summary>The mill's rules: household flour takes less, and enrichment is known by its premix.</summary>
    public static ReworkRules Rules { get; } = ReworkRules.Start with { Doses = [new("PA", 2)], Premixes = [new("enrichment premix", 400)] };

    /// <summary>Keeps them; kept already, nothing is changed. Of one tote nobody said why.</summary>
    public static void Keep(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        KeepReworkRules.Keep(mill, Rules, Lab);
        var totes = mill.Ask(view => view.Book.OfKind(PlaceKind.ReworkTote).Select(p => (p.Code, At: view.Book.MovementsOf(p.Id).Select(i => view.Book.Movements[i]).Where(m => m.To == p.Id).Select(m => (Instant?)m.At).FirstOrDefault())).ToArray());
        foreach (var (code, at) in totes.Where(t => t.At is not null && t.Code != "R-250902-1"))
        {
            mill.Papers(ToteRecord.Kind).Keep(code, 1, new ToteRecord(code, "furnace ash above the limit on two samples; dry, clean, no odour", at!.Value, Lab).ToJson(), Lab);
        }
    }
}
