@echo off
rem Runs belthigh.jar beside this file, with what the build left there of the classes it uses: a class
rem archive, or the AOT cache of Java 25 and later. BELTHIGH_JAVA_OPTS comes last and wins.
setlocal
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
rem a short run is over before the second compiler pays
set "COMPILER=-XX:TieredStopAtLevel=1"
for %%a in (%*) do if "%%~a"=="--league" set "COMPILER=-XX:TieredStopAtLevel=4"
set "ARCHIVE="
if exist "%~dp0belthigh.jsa" set ARCHIVE=-Xshare:auto "-XX:SharedArchiveFile=%~dp0belthigh.jsa"
if exist "%~dp0belthigh.aot" set ARCHIVE=-XX:+IgnoreUnrecognizedVMOptions "-XX:AOTCache=%~dp0belthigh.aot"
"%JAVA%" -Xlog:disable %ARCHIVE% -XX:+UseSerialGC %COMPILER% %BELTHIGH_JAVA_OPTS% -jar "%~dp0belthigh.jar" %*
