#!/usr/bin/env bash
# Packs the library and runs strangers' programs against the package: the readme's first block, unchanged, and a log from JSON.
# All must print the same, byte for byte, on the net10.0 and the netstandard2.0 build, and compiled ahead of time where a linker is there.
# With --mono also as a .NET Framework program on Mono.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp -r tests/Consumers "$work/consumers"
rm -rf "$work"/consumers/*/bin "$work"/consumers/*/obj

build/pack.sh "$work/feed" > "$work/pack.log" || { cat "$work/pack.log" >&2; exit 1; }
version=$(basename "$work"/feed/MarineService.Core.*.nupkg .nupkg | sed 's/^MarineService\.Core\.//')

# A private package folder: the shared one keeps the first package of a version that it ever saw.
cat > "$work/consumers/nuget.config" <<CONFIG
<configuration>
  <config><add key="globalPackagesFolder" value="$work/packages" /></config>
  <packageSources><add key="packed" value="$work/feed" /></packageSources>
  <packageSourceMapping>
    <packageSource key="packed"><package pattern="MarineService.*" /></packageSource>
    <packageSource key="nuget.org"><package pattern="*" /></packageSource>
  </packageSourceMapping>
</configuration>
CONFIG

{
    awk '/^```csharp/{n++; if (n==1) {inside=1; next}} /^```/{inside=0} inside' README.md
    cat <<'MORE'

MarineService.Core.Exchange.ReadResult<ServiceLog> read = MarineService.Core.Exchange.ServiceLogJson.Read(System.Text.Encoding.UTF8.GetBytes(
    MarineService.Core.Exchange.ServiceLogJson.ToText(log)));
Console.WriteLine(read.Value.Entries.Count);
Console.Error.WriteLine(((System.Runtime.Versioning.TargetFrameworkAttribute)Attribute.GetCustomAttribute(
    typeof(EngineHours).Assembly, typeof(System.Runtime.Versioning.TargetFrameworkAttribute))!).FrameworkName);
MORE
} > "$work/consumers/Readme.g.cs"

run() { # project, expected build
    dotnet build "$work/consumers/$1" -c Release --nologo -v quiet -p:MarineServiceVersion="$version"
    dotnet "$work/consumers/$1/bin/Release/"net*/Consumer.dll > "$work/$1.out" 2> "$work/$1.build"
    grep -qxF "$2" "$work/$1.build" || { echo "$1 loaded $(cat "$work/$1.build"), not $2" >&2; exit 1; }
}

run Net10 ".NETCoreApp,Version=v10.0"
run NetStandard ".NETStandard,Version=v2.0"
cmp "$work/Net10.out" "$work/NetStandard.out"
echo "consumers agree: net10.0, netstandard2.0"

if command -v clang > /dev/null || command -v gcc > /dev/null; then
    linker=()
    command -v clang > /dev/null || linker=(-p:CppCompilerAndLinker=gcc)
    dotnet publish "$work/consumers/Aot" -c Release --nologo -v quiet -p:MarineServiceVersion="$version" "${linker[@]}" -o "$work/aot"
    "$work/aot/Consumer" > "$work/Aot.out" 2> /dev/null
    cmp "$work/Net10.out" "$work/Aot.out"
    echo "consumers agree: compiled ahead of time"
else
    echo "no clang or gcc here: nothing compiled ahead of time"
fi

if [ "${1:-}" = --mono ]; then
    dotnet build "$work/consumers/Mono" -c Release --nologo -v quiet -p:MarineServiceVersion="$version"
    mono "$work/consumers/Mono/bin/Release/net48/Consumer.exe" | tr -d '\r' > "$work/Mono.out"
    cmp "$work/Net10.out" "$work/Mono.out"
    echo "consumers agree: $(mono --version | head -n 1)"
fi
