namespace MarineService.Core.Fluids;

/// <summary>What the temperature of an oil is taken to be when nobody took it: project choice.</summary>
internal readonly record struct TemperatureAssumption(double Celsius, double SigmaKelvins);
