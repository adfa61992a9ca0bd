namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>A test that needs Chromium; skipped by name where there is none.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ChromiumFactAttribute : FactAttribute
{
    public ChromiumFactAttribute() => Skip = Chromium.Path is null ? Chromium.Missing : null;
}

/// <summary>The same for tests with data.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ChromiumTheoryAttribute : TheoryAttribute
{
    public ChromiumTheoryAttribute() => Skip = Chromium.Path is null ? Chromium.Missing : null;
}
