using System.Collections.Frozen;

namespace Evengrist.Plant.Epcis;

/// <summary>A list of words of the core business vocabulary (CBV 2.0) and where it stands on the web.</summary>
/// <param name="What">What the words are, for people.</param>
/// <param name="Web">What stands before a word in its web form.</param>
/// <param name="Urn">What stood before it in the form of CBV 1.</param>
internal sealed record CbvWords(string What, string Web, string Urn, FrozenSet<string> Words)
{
    private const string Cbv = "https://ref.gs1.org/cbv/";
    private const string Voc = "https://gs1.org/voc/";

    public static CbvWords BusinessStep { get; } = Of("a business step of CBV 2.0 such as receiving or storing", Cbv + "BizStep-", "urn:epcglobal:cbv:bizstep:",
        "accepting arriving assembling collecting commissioning consigning creating_class_instance cycle_counting decommissioning departing destroying disassembling dispensing encoding entering_exiting holding inspecting installing "
        + "killing loading other packing picking receiving removing repackaging repairing replacing reserving retail_selling sampling sensor_reporting shipping staging_outbound stock_taking stocking storing transporting unloading "
        + "unpacking void_shipping");

    public static CbvWords Disposition { get; } = Of("a disposition of CBV 2.0 such as in_progress or recalled", Cbv + "Disp-", "urn:epcglobal:cbv:disp:",
        "active available completeness_inferred completeness_verified conformant container_closed container_open damaged destroyed dispensed disposed encoded expired in_progress in_transit inactive mismatch_class mismatch_instance "
        + "mismatch_quantity needs_replacement no_pedigree_match non_conformant non_sellable_other partially_dispensed recalled reserved retail_sold returned sellable_accessible sellable_not_accessible stolen unavailable unknown");

    public static CbvWords TransactionType { get; } = Of("a type of business transaction of CBV 2.0 such as po or desadv", Cbv + "BTT-", "urn:epcglobal:cbv:btt:",
        "bol cert desadv inv pedigree po poc prodorder recadv rma testprd testres upevt");

    public static CbvWords SourceType { get; } = Of("owning_party, possessing_party or location", Cbv + "SDT-", "urn:epcglobal:cbv:sdt:", "owning_party possessing_party location");

    public static CbvWords ErrorReason { get; } = Of("did_not_occur or incorrect_data", Cbv + "ER-", "urn:epcglobal:cbv:er:", "did_not_occur incorrect_data");

    public static CbvWords Component { get; } = Of("a component such as x or latitude", Cbv + "Comp-", "urn:epcglobal:cbv:comp:",
        "x y z axial_distance azimuth height spherical_radius polar_angle elevation_angle easting northing latitude longitude altitude geocoordinate");

    public static CbvWords SensorAlert { get; } = Of("ALARM_CONDITION or ERROR_CONDITION", Voc, "", "ALARM_CONDITION ERROR_CONDITION");

    public static CbvWords Measurement { get; } = Of("a measured property such as Temperature or Mass", Voc, "",
        "AbsoluteHumidity AbsorbedDose AbsorbedDoseRate Acceleration Activity Altitude AmountOfSubstance AmountOfSubstancePerUnitVolume Angle AngularAcceleration AngularMomentum AngularVelocity Area Capacitance Conductance "
        + "Conductivity Count Density Dimensionless DoseEquivalent DoseEquivalentRate DynamicViscosity ElectricCharge ElectricCurrent ElectricCurrentDensity ElectricFieldStrength Energy Exposure Force Frequency Illuminance Inductance "
        + "Irradiance KinematicViscosity Length LinearMomentum Luminance LuminousFlux LuminousIntensity MagneticFlux MagneticFluxDensity MagneticVectorPotential Mass MassConcentration MassFlowRate MassPerAreaTime MemoryCapacity "
        + "MolalityOfSolute MolarEnergy MolarMass MolarVolume Power Pressure RadiantFlux RadiantIntensity RelativeHumidity Resistance Resistivity SolidAngle SpecificVolume Speed SurfaceDensity SurfaceTension Temperature Time Torque "
        + "Voltage Volume VolumeFlowRate VolumeFraction VolumetricFlux Wavenumber");

    /// <summary>The web form of a word, of its older form, or of its short form; what is none of them stays as it is.</summary>
    public string Long(string word) => Words.Contains(word) ? Web + word
        : Urn.Length > 0 && word.StartsWith(Urn, StringComparison.Ordinal) ? Web + word[Urn.Length..]
        : word.StartsWith("cbv:", StringComparison.Ordinal) ? Cbv + word["cbv:".Length..]
        : word.StartsWith("gs1:", StringComparison.Ordinal) ? Voc + word["gs1:".Length..]
        : word;

    private static CbvWords Of(string what, string web, string urn, string words) => new(what, web, urn, words.Split(' ').ToFrozenSet(StringComparer.Ordinal));
}
