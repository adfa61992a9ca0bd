namespace Evengrist.Web.Face;

/// <summary>One stop on the way of the grain, or one of the pages that look over the whole way.</summary>
/// <param name="Name">The word in the navigation.</param>
/// <param name="Path">Where its page lies.</param>
/// <param name="OnTheWay">Whether grain passes through it.</param>
/// <param name="Beside">Where more of its pages lie; null where all lie under its path.</param>
public sealed record Room(string Name, string Path, bool OnTheWay, string? Beside = null)
{
    /// <summary>Whether a page is one of this room.</summary>
    /// <param name="path">Where the page lies.</param>
    public bool Holds(string path) => Path == "/" ? path == "/" : IsUnder(path, Path) || (Beside is { } beside && IsUnder(path, beside));

    private static bool IsUnder(string path, string root) => path == root || path.StartsWith(root + "/", StringComparison.Ordinal);
}
