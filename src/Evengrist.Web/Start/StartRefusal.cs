namespace Evengrist.Web.Start;

/// <summary>The program does not start: what was asked cannot be, and the message says what to do.</summary>
public sealed class StartRefusal(string message) : Exception(message);
