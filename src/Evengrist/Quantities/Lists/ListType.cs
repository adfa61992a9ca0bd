namespace Evengrist.Quantities.Lists;

/// <summary>What sort of value stands in a column of a list that is taken out.</summary>
public enum ListType
{
    /// <summary>Words or a code; a <see cref="string"/>.</summary>
    Text,

    /// <summary>A whole number; a <see cref="long"/>.</summary>
    Whole,

    /// <summary>A number; a <see cref="decimal"/> or a <see cref="double"/>.</summary>
    Number,

    /// <summary>A moment; a <see cref="NodaTime.Instant"/>.</summary>
    Moment,

    /// <summary>A day of the calendar; a <see cref="NodaTime.LocalDate"/>.</summary>
    Day,

    /// <summary>Yes or no; a <see cref="bool"/>.</summary>
    YesNo,
}
