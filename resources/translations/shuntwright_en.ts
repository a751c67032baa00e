<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>ui</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %Ln channel(s)</source>
        <translation>
            <numerusform>%1 in %Ln channel</numerusform>
            <numerusform>%1 in %Ln channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; and %n more</source>
        <translation>
            <numerusform>%1; and %n more</numerusform>
            <numerusform>%1; and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln are left alone.</source>
        <translation>
            <numerusform>%Ln is left alone.</numerusform>
            <numerusform>%Ln are left alone.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cannot tell</source>
        <translation>
            <numerusform>%Ln cannot tell</numerusform>
            <numerusform>%Ln cannot tell</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln changed beyond the margin</source>
        <translation>
            <numerusform>%Ln changed beyond the margin</numerusform>
            <numerusform>%Ln changed beyond the margin</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln channel(s)</source>
        <translation>
            <numerusform>%Ln channel</numerusform>
            <numerusform>%Ln channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln channel(s) are added.</source>
        <translation>
            <numerusform>%Ln channel is added.</numerusform>
            <numerusform>%Ln channels are added.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln channel(s) change.</source>
        <translation>
            <numerusform>%Ln channel changes.</numerusform>
            <numerusform>%Ln channels change.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln fail</source>
        <translation>
            <numerusform>%Ln fail</numerusform>
            <numerusform>%Ln fail</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln not checked</source>
        <translation>
            <numerusform>%Ln not checked</numerusform>
            <numerusform>%Ln not checked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln not judged</source>
        <translation>
            <numerusform>%Ln not judged</numerusform>
            <numerusform>%Ln not judged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln pass</source>
        <translation>
            <numerusform>%Ln pass</numerusform>
            <numerusform>%Ln pass</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) of open checks are dropped.</source>
        <translation>
            <numerusform>%Ln reading of an open check is dropped.</numerusform>
            <numerusform>%Ln readings of open checks are dropped.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln refuse.</source>
        <translation>
            <numerusform>%Ln refuses.</numerusform>
            <numerusform>%Ln refuse.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln refused.</source>
        <translation>
            <numerusform>%Ln refused.</numerusform>
            <numerusform>%Ln refused.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) are refused.</source>
        <translation>
            <numerusform>%Ln row is refused.</numerusform>
            <numerusform>%Ln rows are refused.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) were refused.</source>
        <translation>
            <numerusform>%Ln row was refused.</numerusform>
            <numerusform>%Ln rows were refused.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stay as they are.</source>
        <translation>
            <numerusform>%Ln stays as it is.</numerusform>
            <numerusform>%Ln stay as they are.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln with open remarks</source>
        <translation>
            <numerusform>%Ln with open remarks</numerusform>
            <numerusform>%Ln with open remarks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) that the file has not: %1</source>
        <translation>
            <numerusform>%n change that the file has not: %1</numerusform>
            <numerusform>%n changes that the file has not: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n channel(s)</source>
        <translation>
            <numerusform>%n channel</numerusform>
            <numerusform>%n channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n error(s)</source>
        <translation>
            <numerusform>%n error</numerusform>
            <numerusform>%n errors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s)</source>
        <translation>
            <numerusform>%n fault</numerusform>
            <numerusform>%n faults</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s) of this plan are known</source>
        <translation>
            <numerusform>A fault of this plan is known</numerusform>
            <numerusform>%n faults of this plan are known</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n faults explain every reading: more readings tell them apart.</source>
        <translation>
            <numerusform>%n faults explain every reading: more readings tell them apart.</numerusform>
            <numerusform>%n faults explain every reading: more readings tell them apart.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n leak(s)</source>
        <translation>
            <numerusform>a leak</numerusform>
            <numerusform>%n leaks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n level(s), which do not fit the plan</source>
        <translation>
            <numerusform>%n level, which does not fit the plan</numerusform>
            <numerusform>%n levels, which do not fit the plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note(s)</source>
        <translation>
            <numerusform>%n note</numerusform>
            <numerusform>%n notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) found</source>
        <translation>
            <numerusform>%n place found</numerusform>
            <numerusform>%n places found</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n reading</numerusform>
            <numerusform>%n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings: mean %1, standard uncertainty of the mean %2 %3</source>
        <translation>
            <numerusform>%n readings: mean %1, standard uncertainty of the mean %2 %3</numerusform>
            <numerusform>%n readings: mean %1, standard uncertainty of the mean %2 %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs of the sequence</source>
        <translation>
            <numerusform>%n runs of the sequence</numerusform>
            <numerusform>%n runs of the sequence</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n shunt(s)</source>
        <translation>
            <numerusform>%n shunt</numerusform>
            <numerusform>%n shunts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n span(s) of no step</source>
        <translation>
            <numerusform>%n span of no step</numerusform>
            <numerusform>%n spans of no step</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n span(s) of steps</source>
        <translation>
            <numerusform>%n span of a step</numerusform>
            <numerusform>%n spans of steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s), %1 in all</source>
        <translation>
            <numerusform>%n step, %1 in all</numerusform>
            <numerusform>%n steps, %1 in all</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n warning</numerusform>
            <numerusform>%n warnings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %Ln channel(s)</source>
        <translation>
            <numerusform>Add %Ln channel</numerusform>
            <numerusform>Add %Ln channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %Ln copies</source>
        <translation>
            <numerusform>Add %Ln copy</numerusform>
            <numerusform>Add %Ln copies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Added %Ln channel(s), %1 to %2.</source>
        <translation>
            <numerusform>Added %Ln channel, %1 to %2.</numerusform>
            <numerusform>Added %Ln channels, %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Added %Ln channel(s).</source>
        <translation>
            <numerusform>Added %Ln channel.</numerusform>
            <numerusform>Added %Ln channels.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %Ln row(s) are shown.</source>
        <translation>
            <numerusform>The only row is shown.</numerusform>
            <numerusform>All %Ln rows are shown.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n more doubt(s).</source>
        <translation>
            <numerusform>And %n more doubt.</numerusform>
            <numerusform>And %n more doubts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Changed %Ln channel(s).</source>
        <translation>
            <numerusform>Changed %Ln channel.</numerusform>
            <numerusform>Changed %Ln channels.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Copied %Ln row(s) of data.</source>
        <translation>
            <numerusform>Copied %Ln row of data.</numerusform>
            <numerusform>Copied %Ln rows of data.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Copied %Ln row(s).</source>
        <translation>
            <numerusform>Copied %Ln row.</numerusform>
            <numerusform>Copied %Ln rows.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Edit %Ln channel(s)</source>
        <translation>
            <numerusform>Edit %Ln channel</numerusform>
            <numerusform>Edit %Ln channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Import %Ln channel(s)</source>
        <translation>
            <numerusform>Import %Ln channel</numerusform>
            <numerusform>Import %Ln channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Remove %n part(s)</source>
        <translation>
            <numerusform>Remove %n part</numerusform>
            <numerusform>Remove %n parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Removed %1; %n step(s) lost it.</source>
        <translation>
            <numerusform>Removed %1; %n step lost it.</numerusform>
            <numerusform>Removed %1; %n steps lost it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Removed %1; %n step(s) lost theirs.</source>
        <translation>
            <numerusform>Removed %1; %n step lost theirs.</numerusform>
            <numerusform>Removed %1; %n steps lost theirs.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set-ups differ in %n things.</source>
        <translation>
            <numerusform>Set-ups differ in %n things.</numerusform>
            <numerusform>Set-ups differ in %n things.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The spans are %n runs of the sequence. Nothing was changed: give the spans of one run to the steps by hand, or take the recording anew and choose the run.</source>
        <translation>
            <numerusform>The spans are %n runs of the sequence. Nothing was changed: give the spans of one run to the steps by hand, or take the recording anew and choose the run.</numerusform>
            <numerusform>The spans are %n runs of the sequence. Nothing was changed: give the spans of one run to the steps by hand, or take the recording anew and choose the run.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The spans fit the steps in %n ways about as well. Nothing was changed: give them to the steps by hand.</source>
        <translation>
            <numerusform>The spans fit the steps in %n ways about as well. Nothing was changed: give them to the steps by hand.</numerusform>
            <numerusform>The spans fit the steps in %n ways about as well. Nothing was changed: give them to the steps by hand.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Wrote %Ln row(s) to %1.</source>
        <translation>
            <numerusform>Wrote %Ln row to %1.</numerusform>
            <numerusform>Wrote %Ln rows to %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n plans</source>
        <translation>
            <numerusform>all %n plans</numerusform>
            <numerusform>all %n plans</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more cell(s)</source>
        <translation>
            <numerusform>and %Ln more cell</numerusform>
            <numerusform>and %Ln more cells</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more line(s)</source>
        <translation>
            <numerusform>and %Ln more line</numerusform>
            <numerusform>and %Ln more lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more that are not told</source>
        <translation>
            <numerusform>and %n more that are not told</numerusform>
            <numerusform>and %n more that are not told</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>changes; %n reading(s) of open checks are dropped</source>
        <translation>
            <numerusform>changes; a reading of an open check is dropped</numerusform>
            <numerusform>changes; %n readings of open checks are dropped</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the stock, %n entries</source>
        <translation>
            <numerusform>the stock, %n entry</numerusform>
            <numerusform>the stock, %n entries</numerusform>
        </translation>
    </message>
</context>
</TS>
