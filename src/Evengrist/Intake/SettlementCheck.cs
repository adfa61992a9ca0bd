using Evengrist.Ledger;

namespace Evengrist.Intake;

/// <summary>What stands in the way of settling a load before any number is reckoned.</summary>
internal static class SettlementCheck
{
    public static IReadOnlyList<string> Of(Delivery delivery, ContractTerms terms)
    {
        var faults = terms.Faults().ToList();
        if (faults.Count == 0)
        {
            faults.AddRange(InForce(delivery, terms));
            faults.AddRange(delivery.Findings.Select(f => f.Fault).OfType<string>());
            faults.AddRange(Counted(delivery, terms));
        }

        return faults;
    }

    private static IEnumerable<string> InForce(Delivery delivery, ContractTerms terms)
    {
        if (!terms.InForceOn(delivery.On))
        {
            yield return $"Contract {terms.Title} is not in force on {delivery.On:R}: choose the version that is.";
        }

        foreach (var scale in terms.Scales.Where(s => !s.InForceOn(delivery.On)))
        {
            yield return $"Scale {scale.Title} is not in force on {delivery.On:R}: choose a contract version whose scales are.";
        }
    }

    private static IEnumerable<string> Counted(Delivery delivery, ContractTerms terms)
    {
        foreach (var what in terms.Needed().Where(n => delivery.Findings.All(f => f.What != n)))
        {
            yield return $"No {what.Words()} is recorded, and contract {terms.Title} goes by it: measure it first.";
        }

        foreach (var twice in delivery.Findings.GroupBy(f => f.What).Where(g => g.Count() > 1))
        {
            yield return $"{twice.Key.Words()} is given {twice.Count()} times: say which one counts.";
        }
    }
}
