namespace Evengrist.Laboratory.Methods;

/// <summary>Where slope and bias of a setting are applied.</summary>
public enum AppliedWhere
{
    /// <summary>By the instrument itself, before it reports: nothing is applied here, so that nothing is applied twice.</summary>
    InTheInstrument = 0,

    /// <summary>Here: the instrument reports what it read, and what is judged is the adjusted value.</summary>
    Here = 1,
}
