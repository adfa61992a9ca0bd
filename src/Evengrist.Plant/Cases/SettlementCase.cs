using Evengrist.Intake;
using Evengrist.Quantities;
using NodaTime.Text;

namespace Evengrist.Plant.Cases;

/// <summary>A load posed in JSON with the contract it is to be settled under.</summary>
/// <param name="Delivery">The load.</param>
/// <param name="Terms">The contract.</param>
public sealed record SettlementCase(Delivery Delivery, ContractTerms Terms)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "gross": { "kg": number (or "t") }, "tare": { "kg": number },
          "on": date of the delivery, "2025-07-09"
          "findings": { "protein [% 12mb]": number, "moisture [%]": number, "dockage [%]": number ... the headings of an intake file }
          "contract": { "code", "version", "base": { "amount", "currency", "per": "Bushel" | "Tonne" }, "deductDockage": true | false,
                        "dryMatterShrink": true | false, "baseMoisture": per cent,
                        "scales": [ { "code", "version", "factor": "Protein" ..., "unit", "basis": "12mb", "recordedDecimals", "effect": "AddsToPrice" ...,
                                      "currency", "per", "steps": [ { "from", "effect" } ... ], "end" ... } ... ] }
        }
        """,
        """
        { "gross": { "kg": 24000 }, "tare": { "kg": 9000 }, "on": "2025-07-09",
          "findings": { "moisture [%]": 12.9, "dockage [%]": 0.8 },
          "contract": { "code": "PLAIN", "version": 1, "base": { "amount": 6.20, "currency": "USD", "per": "Bushel" },
                        "deductDockage": true, "dryMatterShrink": true, "baseMoisture": 13.5 } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<SettlementCase> Read(Stream stream) => JsonCase.Read<SettlementCase>(stream, (root, _) => Of(root));

    private static SettlementCase? Of(JsonNode root)
    {
        if (!root.IsObject("gross", "tare", "on", "findings", "contract"))
        {
            return null;
        }

        var (gross, tare) = (Weight(root, "gross"), Weight(root, "tare"));
        if (gross is not null && tare is not null && Weighing.Fault(gross.Value, tare.Value) is { } wrong)
        {
            root.Member("tare")!.Fault($"weights that can be. {wrong}");
            tare = null;
        }

        var day = LocalDatePattern.Iso.Parse(root.Text("on"));
        if (!day.Success)
        {
            root.Member("on", required: false)?.Fault("a date such as \"2025-07-09\"");
        }

        var findings = PosedFindings.Read(root.Member("findings"));
        var terms = root.Member("contract") is { } contract ? PosedTerms.Of(contract) : null;
        return gross is null || tare is null || !day.Success || terms is null
            ? null : new SettlementCase(new Delivery(Weighing.Of(gross.Value, tare.Value), day.Value, findings), terms);
    }

    private static Mass? Weight(JsonNode root, string name) => root.Member(name) is { } node && node.IsObject("kg", "t") ? node.Mass() : null;
}
