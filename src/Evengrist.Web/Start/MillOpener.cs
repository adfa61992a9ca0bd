using Evengrist.Records;
using NodaTime;

namespace Evengrist.Web.Start;

/// <summary>Opens the mill that the command line names.</summary>
public static class MillOpener
{
    private const string DemonstrationFile = "demonstration.db";
    private const string OwnFile = "mill.db";

    /// <summary>The mill, its demonstration laid out at the first start.</summary>
    /// <exception cref="MillCannotOpen">It cannot be opened; the message says what to do.</exception>
    public static Mill Open(WebOptions options, IClock clock, Action<Opening> tell)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(tell);
        Directory.CreateDirectory(options.DataFolder);
        var where = options.Postgres is { } connection ? MillOptions.Shared(connection)
            : MillOptions.InFile(Path.Combine(options.DataFolder, options.Empty ? OwnFile : DemonstrationFile));
        return Mill.Open(where, clock, progress => tell(Said(progress)));
    }

    private static Opening Said(MillProgress progress) => new(progress.Step, progress.Total > 0 ? (double)progress.Done / progress.Total : null);
}
