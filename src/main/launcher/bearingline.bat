@echo off
rem Starts Bearing Line. Needs a Java 17 or newer runtime: JAVA_HOME, or java on the PATH.
setlocal
set "HOME_DIR=%~dp0.."
set "JAVA_EXE=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
"%JAVA_EXE%" -XX:SharedArchiveFile="%HOME_DIR%\lib\bearingline.jsa" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData -Djava.awt.headless=true -Dfile.encoding=UTF-8 -cp "%HOME_DIR%\lib\bearingline.jar" org.bearingline.cli.Main %*
exit /b %ERRORLEVEL%
