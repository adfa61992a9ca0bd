namespace Evengrist.Tracing.Recall;

/// <summary>What sort of thing a recall does not know.</summary>
public enum UnknownKind
{
    /// <summary>The suspect came by an elevator: its field is unknown.</summary>
    FieldBehindElevator,

    /// <summary>Stock found when the ledger began, or at a count: its origin is unknown.</summary>
    OriginUnknown,

    /// <summary>A store that held some of it and was not proven empty since.</summary>
    NeverProvenEmpty,

    /// <summary>Samples, waste, sweepings, loss: not followed further.</summary>
    GoneAstray,

    /// <summary>A customer that has got some: what was made of it and to whom it went is to be asked.</summary>
    SecondaryUse,

    /// <summary>A package of which only part left, or that left in parts: which bags went where is not known.</summary>
    PartLeft,

    /// <summary>Rework that holds some, and what it was fed into.</summary>
    Rework,

    /// <summary>A return from a customer: no hypothesis knows which package came back.</summary>
    Returned,

    /// <summary>Grams taken from places that by the ledger held none; counted as not suspect.</summary>
    Unexplained,

    /// <summary>A store it lay in whose level nobody took in a span: what lay there is in less out as recorded.</summary>
    LevelNotRead,

    /// <summary>A truck without gross and tare: its kilograms are as stated, not as weighed.</summary>
    WeightNotRead,

    /// <summary>Stock found or missed at a count where it lay: inferred, not moved; when and where it came or went is unknown.</summary>
    FoundByCount,

    /// <summary>A place an additive lot was fed into that ran while no dose was recorded: whether the feeder stood or its record is missing is unknown.</summary>
    DoseNotRecorded,

    /// <summary>Flushed, swept or left over off a packing line, under no lot.</summary>
    Flushed,

    /// <summary>Still under way or in a place of the plant: not packed yet.</summary>
    NotPackedYet,
}
