using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Evengrist.Laboratory.Certificates;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>The JSON schema of certificates of analysis, made from the record itself, so that the two cannot differ.</summary>
public static class CertificateSchema
{
    private static readonly Dictionary<string, string> Says = new()
    {
        ["format"] = $"always {AnalysisCertificate.OurFormat}",
        ["number"] = "lot and specification",
        ["version"] = "from 1; a reissue is the next",
        ["packedFrom"] = "ISO 8601, UTC",
        ["packedUntil"] = "ISO 8601, UTC",
        ["issuedAt"] = "ISO 8601, UTC",
        ["quantity"] = "tonnes, UN/ECE Recommendation 20 code TNE",
        ["lines"] = "one for each property measured: result as reported, unit with its code of UN/ECE Recommendation 20 (from memory), moisture basis (14mb: at 14 % moisture; dry; as is), method, ± with k = 2, limits as measured against",
        ["signature"] = "the mill's: ECDSA P-256 over SHA-256 of the UTF-8 text without blanks, members in this order, this member left out; DER, base64; key: first 16 hexadecimal digits of SHA-256 over SubjectPublicKeyInfo",
        ["sampling"] = "how samples were taken",
    };

    /// <summary>The schema.</summary>
    public static JsonNode Of()
    {
        var options = new JsonSerializerOptions(StrictJson.Options());
        options.MakeReadOnly(populateMissingResolver: true);
        var schema = options.GetJsonSchemaAsNode(typeof(AnalysisCertificate), new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true }).AsObject();
        schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
        schema["title"] = AnalysisCertificate.OurFormat;
        schema["description"] = "A certificate of analysis of flour. Its code is SHA-256 over the UTF-8 text without blanks, members in this order, without signature.";
        foreach (var (name, says) in Says)
        {
            if (schema["properties"]?[name] is JsonObject member)
            {
                member["description"] = says;
            }
        }

        return schema;
    }
}
