namespace Evengrist.Cli;

/// <summary>Exit status of the program.</summary>
public static class Exit
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Our own fault.</summary>
    public const int OurFault = 1;

    /// <summary>Bad input; each fault is on a line of standard error with its place.</summary>
    public const int BadInput = 2;

    /// <summary>The input is sound and has no answer; standard error says why.</summary>
    public const int NoAnswer = 3;
}
