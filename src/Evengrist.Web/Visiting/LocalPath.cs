namespace Evengrist.Web.Visiting;

/// <summary>Addresses within this program, so that no form or link can send a person elsewhere.</summary>
public static class LocalPath
{
    /// <summary>The path if it lies within this program; the first page otherwise.</summary>
    public static string Of(string? path) =>
        path is { Length: > 0 } && path[0] == '/' && (path.Length == 1 || path[1] is not ('/' or '\\')) && !path.Any(char.IsControl) ? path : "/";
}
