@echo off
rem Starts Bearing Line. Needs a Java 17 or newer runtime: JAVA_HOME, or java on the PATH.
setlocal
for %%I in ("%~dp0..") do set "HOME_DIR=%%~fI"
set "JAVA_EXE=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
rem Libraries that few commands need stay off the class path of the others.
set "CLASSES=%HOME_DIR%\lib\bearingline.jar"
set "MORE="
if "%1"=="keep" set "MORE=yes"
set "MEMORY="
if "%1"=="keep" set "MEMORY=-XX:MaxRAMPercentage=60"
if "%1"=="corner-marks" set "MORE=yes"
if "%1"=="page" set "MORE=yes"
rem The page runs for hours and is to be quick.
set "WORK=-XX:TieredStopAtLevel=1"
if "%1"=="page" set "WORK=-Xms256m -Xmx2g"
if defined MORE set "CLASSES=%CLASSES%;%HOME_DIR%\lib\more\*"
rem The class-data archives are good for the folder they were made in; elsewhere Java's own is quicker.
set "ARCHIVE="
set "MADE_AT="
if exist "%HOME_DIR%\lib\bearingline.jsa.for" set /p MADE_AT=<"%HOME_DIR%\lib\bearingline.jsa.for"
set "NAME=bearingline-answers"
if "%1"=="layout" set "NAME=bearingline"
if "%1"=="sheets" set "NAME=bearingline"
if "%1"=="page" set "NAME=bearingline"
if "%MADE_AT%"=="%HOME_DIR%" set ARCHIVE=-XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:SharedArchiveFile="%HOME_DIR%\lib\%NAME%.jsa"
"%JAVA_EXE%" %ARCHIVE% %MEMORY% -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC %WORK% -XX:-UsePerfData -Djava.awt.headless=true -Dfile.encoding=UTF-8 -cp "%CLASSES%" org.bearingline.cli.Main %*
exit /b %ERRORLEVEL%
