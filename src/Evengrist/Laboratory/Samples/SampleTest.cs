using Evengrist.Laboratory.Methods;
using Evengrist.Ledger;

namespace Evengrist.Laboratory.Samples;

/// <summary>A test a sample is meant for.</summary>
/// <param name="What">The property.</param>
/// <param name="Method">Code of the method, as in <see cref="LabMethod.Code"/>.</param>
public sealed record SampleTest(Property What, string Method)
{
    /// <summary>In words: <c>protein by NIR</c>.</summary>
    public string Words => $"{What.Words()} by {Method}";

    /// <summary>Whether a reading is a result of it; case of the method does not matter.</summary>
    public bool Is(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.What == What && reading.Method.Equals(Method, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>What is wrong with tests, each a sentence; empty where nothing is.</summary>
    /// <param name="of">Whose, as a sentence begins.</param>
    /// <param name="tests">The tests.</param>
    internal static IEnumerable<string> Faults(string of, IReadOnlyList<SampleTest> tests) =>
    [
        .. tests.Count == 0 ? [$"{of}: name at least one test."] : Array.Empty<string>(),
        .. tests.Where(t => !Enum.IsDefined(t.What) || t.What == Property.None || string.IsNullOrWhiteSpace(t.Method)).Select(_ => $"{of}: a test has a property and a method."),
        .. tests.GroupBy(t => (t.What, t.Method.Trim().ToUpperInvariant())).Where(g => g.Count() > 1).Select(g => $"{of}: {g.First().Words} stands twice; keep it once."),
    ];
}
