namespace BakeInsights;

/// <summary>How much of an ingredient is water.</summary>
/// <param name="Pct">Grams of water in 100 g of the ingredient.</param>
/// <param name="Source">Where the figure was published.</param>
public sealed record WaterContent(double Pct, string Source);
