using Evengrist.Cli;
using NodaTime;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Runs the command line in this process.</summary>
internal static class Shell
{
    public static (int Status, string Output, string Error) Run(params IReadOnlyList<string> args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var status = new CommandLine(output, error, new Noon()).Run(args);
        return (status, output.ToString(), error.ToString());
    }

    private sealed class Noon : IClock
    {
        public Instant GetCurrentInstant() => Plant.SmallMill.Recorded;
    }
}
