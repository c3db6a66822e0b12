using CsCheck;

namespace BakeInsights.Tests;

/// <summary>Changes at random places of a file: bytes put over others, put in, cut out, doubled, and the end cut off.</summary>
internal static class Damage
{
    private static readonly Gen<byte> Piece = Gen.OneOf(
        Gen.Byte, Gen.OneOf("\",\n\r;0-9.eF \t\0"u8.ToArray()));

    private static readonly Gen<Func<byte[], byte[]>> One = Gen.OneOf(
        Gen.Select(Gen.Double.Unit, Piece, (at, put) => Edit(at, (bytes, i) => [.. bytes[..i], put, .. bytes[Math.Min(i + 1, bytes.Length)..]])),
        Gen.Select(Gen.Double.Unit, Piece, (at, put) => Edit(at, (bytes, i) => [.. bytes[..i], put, .. bytes[i..]])),
        Gen.Select(Gen.Double.Unit, Gen.Int[1, 80], (at, cut) => Edit(at, (bytes, i) => [.. bytes[..i], .. bytes[Math.Min(i + cut, bytes.Length)..]])),
        Gen.Select(Gen.Double.Unit, Gen.Int[1, 80], (at, twice) => Edit(at, (bytes, i) => [.. bytes[..Math.Min(i + twice, bytes.Length)], .. bytes[i..]])),
        Gen.Double.Unit.Select(at => Edit(at, (bytes, i) => bytes[..i])));

    /// <summary>How many files to damage: few by themselves, a million with BAKEINSIGHTS_LONG_RUN set to 1.</summary>
    public static long Files(long usually) =>
        Environment.GetEnvironmentVariable("BAKEINSIGHTS_LONG_RUN") == "1" ? 1_000_000 : usually;

    /// <summary>Up to a dozen changes.</summary>
    public static Gen<Func<byte[], byte[]>[]> Any { get; } = One.Array[1, 12];

    /// <summary>The bytes with the changes made, one after the other.</summary>
    public static byte[] Apply(IEnumerable<Func<byte[], byte[]>> damages, byte[] bytes) =>
        damages.Aggregate(bytes, (damaged, damage) => damage(damaged));

    private static Func<byte[], byte[]> Edit(double at, Func<byte[], int, byte[]> edit) =>
        bytes => edit(bytes, (int)(at * bytes.Length));
}
