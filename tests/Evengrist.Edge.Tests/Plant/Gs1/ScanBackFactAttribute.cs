namespace Evengrist.Edge.Tests.Plant.Gs1;

/// <summary>A test that reads printed symbols back; skipped by name where the readers are not installed.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ScanBackFactAttribute : FactAttribute
{
    public ScanBackFactAttribute() => Skip = ScanBack.Missing;
}
