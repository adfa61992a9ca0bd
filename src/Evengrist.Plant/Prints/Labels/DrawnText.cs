namespace Evengrist.Plant.Prints.Labels;

/// <summary>A line of text: where its base line begins and how wide it is, mm; its size in points.</summary>
internal sealed record DrawnText(double X, double Base, double Points, bool Bold, string Text, double Wide);
