global using MarineService.Core;
global using MarineService.Core.Tests;
global using Xunit;
