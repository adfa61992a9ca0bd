using Evengrist.Plant;

namespace Evengrist.Cli;

/// <summary>Thrown to end a command with its faults.</summary>
internal sealed class BadInput(params IReadOnlyList<Fault> faults) : Exception(faults[0].ToString())
{
    public IReadOnlyList<Fault> Faults => faults;
}
