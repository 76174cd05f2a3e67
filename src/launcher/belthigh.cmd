@echo off
rem Runs belthigh.jar beside this file, with the class archive that the build left there.
rem BELTHIGH_JAVA_OPTS comes last and wins.
setlocal
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
set "ARCHIVE="
if exist "%~dp0belthigh.jsa" set ARCHIVE="-XX:SharedArchiveFile=%~dp0belthigh.jsa"
"%JAVA%" -Xlog:disable -Xshare:auto %ARCHIVE% -XX:+UseSerialGC -XX:TieredStopAtLevel=1 %BELTHIGH_JAVA_OPTS% -jar "%~dp0belthigh.jar" %*
