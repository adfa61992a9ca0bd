using Evengrist.Ledger;
using Evengrist.Streams.Surveys;

namespace Evengrist.Records.Streams;

/// <summary>The stream surveys a mill keeps, and the flours it divides its streams into: papers by version, one of each for a unit.</summary>
public static class StreamSurveys
{
    /// <summary>The mill units whose streams can be surveyed, by code.</summary>
    public static IReadOnlyList<string> Units(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view => view.Book.OfKind(PlaceKind.MillUnit).Select(p => p.Code).Order(StringComparer.Ordinal).ToArray());
    }

    /// <summary>Keeps a survey as the unit's next; every fault where it cannot be, and then nothing is kept.</summary>
    public static (KeptSurvey? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, StreamSurvey survey, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(survey);
        string[] faults = [.. Allowed(mill, survey.Unit, by), .. survey.Faults()];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var shelf = mill.Papers(StreamSurvey.Kind);
        return (Read(shelf.Find(survey.Unit, shelf.KeepNext(survey.Unit, survey.ToJson(), by))!), []);
    }

    /// <summary>Keeps the flours of a unit as the next version; every fault where they cannot be, and then nothing is kept.</summary>
    /// <returns>The version; 0 where there are faults.</returns>
    public static (int Version, IReadOnlyList<string> Faults) Keep(Mill mill, WantedFlours flours, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(flours);
        string[] faults = [.. Allowed(mill, flours.Unit, by), .. flours.Faults()];
        return faults.Length > 0 ? (0, faults) : (mill.Papers(WantedFlours.Kind).KeepNext(flours.Unit, flours.ToJson(), by), []);
    }

    /// <summary>Every survey of every unit, by unit, the first version first.</summary>
    public static IReadOnlyList<KeptSurvey> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(StreamSurvey.Kind).All().Select(Read).OfType<KeptSurvey>()];
    }

    /// <summary>The newest survey of a unit; null where none is kept.</summary>
    public static KeptSurvey? Newest(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(StreamSurvey.Kind).Newest(unit) is { } paper ? Read(paper) : null;
    }

    /// <summary>The flours kept for a unit and their version; null where none are.</summary>
    public static (WantedFlours Flours, int Version, string By)? FloursOf(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(WantedFlours.Kind).Newest(unit) is { } paper && WantedFlours.TryRead(paper.Json, out var flours, out _) ? (flours, paper.Version, paper.By) : null;
    }

    private static IEnumerable<string> Allowed(Mill mill, string unit, string by)
    {
        if (string.IsNullOrWhiteSpace(by))
        {
            yield return "Say who you are first: every record carries a name.";
        }

        var units = Units(mill);
        if (!units.Contains(unit))
        {
            yield return units.Count == 0 ? "The mill has no unit yet: enter its places first." : $"There is no unit {unit}: there are {string.Join(", ", units)}.";
        }
    }

    private static KeptSurvey? Read(Paper paper) => StreamSurvey.TryRead(paper.Json, out var survey, out _) ? new KeptSurvey(paper.Version, paper.By, paper.Recorded, survey) : null;
}
