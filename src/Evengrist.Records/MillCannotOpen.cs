namespace Evengrist.Records;

/// <summary>The database cannot be opened. The message says what is wrong and what to do; nothing in the database was changed.</summary>
public sealed class MillCannotOpen(string message, Exception? inner = null) : Exception(message, inner);
