namespace Evengrist.Web.Sights;

/// <summary>Passes progress on at once, on the thread that reports it.</summary>
internal sealed class Telling<T>(Action<T> tell) : IProgress<T>
{
    public void Report(T value) => tell(value);
}
