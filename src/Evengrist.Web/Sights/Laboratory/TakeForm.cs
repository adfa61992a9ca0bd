using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A sample taken, as typed; on the bench and over HTTP.</summary>
public sealed class TakeForm
{
    /// <summary>Number on the jar.</summary>
    public string? Code { get; set; }

    /// <summary>Code of the place.</summary>
    public string? Place { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>Code of the line of the plan; empty for a sample out of turn.</summary>
    public string? Line { get; set; }

    /// <summary>Tests of a sample out of turn: <c>Protein by NIR</c>, parted by semicolons; those of the line where it is one.</summary>
    public string? Tests { get; set; }

    /// <summary>In the taker's words.</summary>
    public string? Remark { get; set; }

    /// <summary>Records it; every fault where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="receipt">What became of it; null where there is a fault.</param>
    public IReadOnlyList<string> Record(Mill mill, Instant? at, string? by, string nameless, out Receipt? receipt)
    {
        ArgumentNullException.ThrowIfNull(mill);
        receipt = null;
        var faults = new List<string>();
        var (line, named) = (KeepLabPlan.Newest(mill).Plan.Of(Line ?? ""), (Line ?? "").Trim());
        if (named.Length > 0 && line is null)
        {
            faults.Add($"There is no line \"{named}\" in the sampling plan.");
        }

        var sample = new LabSample((Code ?? "").Trim(), line?.Code ?? "", line?.Tests ?? TestsRead(faults), (Remark ?? "").Trim());
        faults.AddRange(faults.Count > 0 ? [] : sample.Faults());
        faults.AddRange(EntryFaults.Of("-", at, by, nameless));
        if (string.IsNullOrWhiteSpace(Place))
        {
            faults.Add("Say where it was taken: the code of the place.");
        }

        if (faults.Count > 0)
        {
            return faults;
        }

        try
        {
            receipt = new TakeLabSample(Place!.Trim(), at!.Value, sample).In(mill, by!);
        }
        catch (LedgerRefusal refusal)
        {
            faults.Add(refusal.Message);
        }

        return faults;
    }

    private List<SampleTest> TestsRead(List<string> faults)
    {
        var tests = new List<SampleTest>();
        foreach (var part in (Tests ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var halves = part.Split(" by ", 2, StringSplitOptions.TrimEntries);
            if (halves.Length == 2 && Readings.Called(halves[0]) is var what && what != Property.None)
            {
                tests.Add(new SampleTest(what, halves[1]));
            }
            else
            {
                faults.Add($"\"{part}\" is no test: write a property and a method, as Protein by NIR; a semicolon between two.");
            }
        }

        return tests;
    }
}
