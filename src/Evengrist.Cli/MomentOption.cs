using System.CommandLine;
using Evengrist.Plant;
using Evengrist.Plant.Imports;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Cli;

/// <summary>An option that takes a moment.</summary>
internal static class MomentOption
{
    public static Option<string?> Of(string name, string meaning) => new(name) { Description = meaning, HelpName = "TIME" };

    public static Instant? Read(ParseResult asked, Option<string?> option)
    {
        if (asked.GetValue(option) is not { } text)
        {
            return null;
        }

        var (at, expected) = Moments.Of(text, null);
        return at ?? throw new BadInput(new Fault(null, null, option.Name, Fault.Show(text), expected));
    }

    /// <summary>The moment a mill is looked at: the one asked for, else the one it opens at, the newest in its ledger, or now.</summary>
    public static Instant LookedAt(Instant? asked, Mill mill, IClock clock) => asked ?? mill.Settings.OpensAt ?? mill.Ask(view => view.Book.Newest) ?? clock.GetCurrentInstant();
}
