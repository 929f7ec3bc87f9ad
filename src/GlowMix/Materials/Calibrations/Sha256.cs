using System.Security.Cryptography;
using System.Text;

namespace GlowMix.Materials.Calibrations;

/// <summary>SHA-256 (FIPS 180-4) as 64 small hexadecimal digits, as every 'sha256sum' prints it.</summary>
public static class Sha256
{
    /// <summary>Digits of a hash.</summary>
    public const int Length = 64;

    /// <summary>Of a file's bytes.</summary>
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Of a text in UTF-8, without a byte order mark.</summary>
    public static string Of(string text) => Of(Encoding.UTF8.GetBytes(text));

    /// <summary>Of a material's file; null where it has none.</summary>
    public static string? Of(Material material) => material.Origin is { } origin ? Of(origin.Text) : null;
}
