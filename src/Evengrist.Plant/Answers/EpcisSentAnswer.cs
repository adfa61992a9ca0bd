using Evengrist.Plant.Epcis.Sending;

namespace Evengrist.Plant.Answers;

/// <summary>A document that was sent, in plain values.</summary>
/// <param name="To">Whom it went to.</param>
/// <param name="Number">Number of the sending to him.</param>
/// <param name="What">What it told: the code of a lot, or a span.</param>
/// <param name="Outflow">How bins were taken to empty.</param>
/// <param name="Events">Events in it.</param>
/// <param name="New">Those he had not been told before.</param>
/// <param name="DeclaredWrong">Those he had been told and that it declared wrong.</param>
/// <param name="By">Who sent it.</param>
/// <param name="Sent">When.</param>
public sealed record EpcisSentAnswer(string To, int Number, string What, string Outflow, int Events, int New, int DeclaredWrong, string By, DateTimeOffset Sent)
{
    /// <summary>In plain values.</summary>
    /// <param name="json">The head as it is kept.</param>
    /// <param name="number">Number of the sending.</param>
    /// <param name="by">Who sent it.</param>
    /// <param name="sent">When.</param>
    public static EpcisSentAnswer Of(string json, int number, string by, DateTimeOffset sent) => SentDocument.TryRead(json, out var head, out var faults)
        ? new(head.To, number, head.Code ?? $"{head.From:uuuu-MM-dd'T'HH:mm'Z'} to {head.Until:uuuu-MM-dd'T'HH:mm'Z'}", head.Outflow.ToString(), head.Events, head.Told, head.Declared, by, sent)
        : throw new InvalidOperationException(string.Join(" ", faults));
}

/// <summary>What somebody was told and would now be told to be wrong.</summary>
/// <param name="To">Whom it would go to.</param>
/// <param name="Standing">Events he was told that were not declared wrong to him.</param>
/// <param name="Wrong">Those of them that the ledger does not say any more.</param>
public sealed record EpcisWouldDeclareAnswer(string To, int Standing, IReadOnlyList<EpcisEventAnswer> Wrong)
{
    /// <summary>In plain values.</summary>
    public static EpcisWouldDeclareAnswer Of(string to, DocumentTo document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return new(to, document.InForce, [.. document.Wrong().Select(Of)]);
    }

    /// <summary>An event declared wrong, in plain values.</summary>
    public static EpcisEventAnswer Of(WrongEvent wrong)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        return EpcisEventAnswer.Of(wrong.Event) with { DeclaredWrong = true, CorrectedBy = wrong.CorrectedBy };
    }
}
