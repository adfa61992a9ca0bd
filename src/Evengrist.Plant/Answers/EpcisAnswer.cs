using Evengrist.Plant.Epcis;

namespace Evengrist.Plant.Answers;

/// <summary>A document that holds against the rules, in plain values.</summary>
/// <param name="Events">Its events, in its order.</param>
/// <param name="Asked">What may be meant but is worth a question.</param>
public sealed record EpcisAnswer(IReadOnlyList<EpcisEventAnswer> Events, IReadOnlyList<string> Asked)
{
    /// <summary>The document in plain values.</summary>
    public static EpcisAnswer Of(EpcisDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return new([.. document.Events.Select(EpcisEventAnswer.Of)], [.. document.Asked.Select(a => a.ToString())]);
    }
}

/// <summary>An event in plain values.</summary>
/// <param name="Hash">Its event hash id.</param>
/// <param name="DeclaredWrong">Whether it is declared to be in error; then <paramref name="CorrectedBy"/> names what stands in for it, where anything does.</param>
public sealed record EpcisEventAnswer(
    string Hash, string Type, DateTimeOffset At, string Step, string Disposition, string ReadPoint, IReadOnlyList<string> Things, bool DeclaredWrong, IReadOnlyList<string> CorrectedBy, string By = "", DateTimeOffset? TakenIn = null)
{
    /// <summary>The event in plain values.</summary>
    public static EpcisEventAnswer Of(EpcisEvent told)
    {
        ArgumentNullException.ThrowIfNull(told);
        return new(told.Hash, told.Type, told.At.ToDateTimeOffset(), told.Step, told.Disposition, told.ReadPoint, told.Things, told.DeclaresError, told.CorrectedBy);
    }

    /// <summary>A kept event with who took it in and when.</summary>
    /// <param name="hash">The hash it is kept under.</param>
    /// <param name="json">The event by itself.</param>
    /// <param name="by">Who took it in.</param>
    /// <param name="takenIn">When.</param>
    public static EpcisEventAnswer OfKept(string hash, string json, string by, DateTimeOffset takenIn) => Of(EpcisEvent.Known(hash, json)) with { By = by, TakenIn = takenIn };
}

/// <summary>What became of a document taken in.</summary>
/// <param name="Added">Events not known before.</param>
/// <param name="DeclaredWrong">Events known before that it declares to be in error.</param>
/// <param name="AlreadyKnown">Events known before.</param>
/// <param name="Asked">What may be meant but is worth a question.</param>
/// <param name="NeverSeen">Of those added, events that it declares to be in error though nobody had told them.</param>
public sealed record EpcisTakenAnswer(int Added, int DeclaredWrong, int AlreadyKnown, IReadOnlyList<string> Asked, int NeverSeen = 0);
