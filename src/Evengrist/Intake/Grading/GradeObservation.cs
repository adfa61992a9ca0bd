namespace Evengrist.Intake.Grading;

/// <summary>What is smelt or seen on a sample and is no number.</summary>
public enum GradeObservation
{
    /// <summary>Not an observation; the default value is refused.</summary>
    None = 0,

    /// <summary>Musty odour.</summary>
    Musty = 1,

    /// <summary>Sour odour.</summary>
    Sour = 2,

    /// <summary>Commercially objectionable foreign odour, smut and garlic excepted.</summary>
    ForeignOdour = 3,

    /// <summary>Unmistakable odour of smut.</summary>
    SmutOdour = 4,

    /// <summary>Odour of garlic; by itself it changes no grade.</summary>
    GarlicOdour = 5,

    /// <summary>The grain is heating.</summary>
    Heating = 6,

    /// <summary>Distinctly low quality.</summary>
    LowQuality = 7,

    /// <summary>Objects too large to enter the sampler.</summary>
    LargeObject = 8,

    /// <summary>Scoured, limed, washed, sulfured or so treated that the grade does not show the true quality.</summary>
    Treated = 9,

    /// <summary>Living mites.</summary>
    Mites = 10,
}
