using Evengrist.Intake;

namespace Evengrist.Plant.Cases;

/// <summary>The contract of a posed case.</summary>
internal static class PosedTerms
{
    /// <summary>The terms; null with a fault for each thing that is wrong.</summary>
    public static ContractTerms? Of(JsonNode node)
    {
        if (TermsJson.TryRead(node.Raw, out var terms, out var faults))
        {
            return terms;
        }

        foreach (var fault in faults)
        {
            node.Fault($"contract terms that can be. {fault}");
        }

        return null;
    }
}
