namespace Evengrist.Edge.Tests.Plant;

/// <summary>Files of the repository.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string Sample(params string[] path) => Path.Combine([Root, "samples", .. path]);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Evengrist.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Run the tests inside the repository.");
    }
}
