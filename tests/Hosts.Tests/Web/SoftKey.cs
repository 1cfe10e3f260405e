using System.Buffers.Binary;
using System.Formats.Cbor;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Watersown.Web;

/// <summary>
/// A passkey made of software, by the published form of WebAuthn level 2: an ES256 key, the attestation "none", a counter that
/// rises. It knows nothing of the desk's code.
/// </summary>
internal sealed class SoftKey(string origin, string domain) : IDisposable
{
    private readonly ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);

    private readonly byte[] id = RandomNumberGenerator.GetBytes(32);

    private uint count;

    private string handle = string.Empty;

    public string Id => Text(id);

    public void Dispose() => key.Dispose();

    /// <summary>What a browser answers when it is asked to make a key.</summary>
    public object Create(JsonElement options)
    {
        handle = options.GetProperty("user").GetProperty("id").GetString()!;
        var client = Client("webauthn.create", options);
        var data = Data(0x45, Attested());
        var cbor = new CborWriter(CborConformanceMode.Ctap2Canonical);
        cbor.WriteStartMap(3);
        cbor.WriteTextString("fmt");
        cbor.WriteTextString("none");
        cbor.WriteTextString("attStmt");
        cbor.WriteStartMap(0);
        cbor.WriteEndMap();
        cbor.WriteTextString("authData");
        cbor.WriteByteString(data);
        cbor.WriteEndMap();
        return new { id = Id, rawId = Id, type = "public-key", clientExtensionResults = new { }, response = new { attestationObject = Text(cbor.Encode()), clientDataJSON = Text(client), transports = Array.Empty<string>() } };
    }

    /// <summary>What a browser answers when it is asked to prove a key.</summary>
    public object Get(JsonElement options)
    {
        var client = Client("webauthn.get", options);
        var data = Data(0x05, []);
        var signature = key.SignData([.. data, .. SHA256.HashData(client)], HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        return new { id = Id, rawId = Id, type = "public-key", clientExtensionResults = new { }, response = new { authenticatorData = Text(data), clientDataJSON = Text(client), signature = Text(signature), userHandle = handle } };
    }

    /// <summary>As if the key had been copied: it counts from before.</summary>
    public void CountBack() => count = 0;

    private byte[] Client(string type, JsonElement options) =>
        Encoding.UTF8.GetBytes(JsonSerializer.Serialize(new { type, challenge = options.GetProperty("challenge").GetString(), origin, crossOrigin = false }));

    private byte[] Data(byte flags, byte[] attested)
    {
        var counter = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(counter, ++count);
        return [.. SHA256.HashData(Encoding.UTF8.GetBytes(domain)), flags, .. counter, .. attested];
    }

    private byte[] Attested()
    {
        var point = key.ExportParameters(false).Q;
        var cose = new CborWriter(CborConformanceMode.Ctap2Canonical);
        cose.WriteStartMap(5);
        foreach (var (label, number) in ((int, int)[])[(1, 2), (3, -7), (-1, 1)])
        {
            cose.WriteInt32(label);
            cose.WriteInt32(number);
        }

        cose.WriteInt32(-2);
        cose.WriteByteString(point.X!);
        cose.WriteInt32(-3);
        cose.WriteByteString(point.Y!);
        cose.WriteEndMap();
        return [.. new byte[16], (byte)(id.Length >> 8), (byte)id.Length, .. id, .. cose.Encode()];
    }

    private static string Text(byte[] bytes) => System.Buffers.Text.Base64Url.EncodeToString(bytes);
}
