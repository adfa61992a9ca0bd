namespace Evengrist.Tests;

/// <summary>A test that reads open data beside the project; skipped by name where it does not lie there.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OpenDataFactAttribute : FactAttribute
{
    public OpenDataFactAttribute() => Skip = OpenData.Folder is null ? OpenData.Missing : null;
}

/// <summary>The same for tests with data.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OpenDataTheoryAttribute : TheoryAttribute
{
    public OpenDataTheoryAttribute() => Skip = OpenData.Folder is null ? OpenData.Missing : null;
}
