using System.Globalization;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;

namespace Evengrist.Mix;

/// <summary>Refuses bins that by themselves lie above a market's limit on wheat: mixing them down is off unless the market's switch, set with authority, is on.</summary>
/// <remarks>The bin's own expected value, as it lies, is held against the limit. Page: docs/model/mix.md.</remarks>
public static class BlendDown
{
    /// <summary>Which bins are refused, and what has to be said of those that are not.</summary>
    public static (IReadOnlyList<LeftOut> Refused, IReadOnlyList<string> Remarks) Of(MixSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var (refused, remarks) = (new List<LeftOut>(), new List<string>());
        foreach (var bin in spec.Bins)
        {
            foreach (var limit in spec.Market.Where(m => m.Stage == LimitStage.AsReceived && bin.Values.ContainsKey(m.What)))
            {
                var value = bin.Values[limit.What];
                var asItLies = value.Value * (value.Basis.IsStated ? MixBlend.Factor(value.Basis) * bin.DryShare : 1);
                if (asItLies <= (double)limit.Most)
                {
                    continue;
                }

                var words = string.Create(CultureInfo.InvariantCulture, $"{bin.Code}: its own {limit.What.Words()} is {asItLies:0.###} {limit.Unit} as it lies, above the limit of {limit.Most} {limit.Unit} ({limit.Source})");
                if (limit.BlendDown)
                {
                    remarks.Add($"{words}; the market's switch allows it to be mixed down.");
                }
                else
                {
                    refused.Add(new LeftOut(bin.Code, $"{words}; mixing down is off."));
                }
            }
        }

        return ([.. refused.DistinctBy(r => r.Bin)], remarks);
    }
}
