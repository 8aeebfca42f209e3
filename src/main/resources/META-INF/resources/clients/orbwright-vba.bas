Attribute VB_Name = "Orbwright"
' Macros for spreadsheets that run VBA: post a whole design, and get a table of its sheet as cells.
'
' Install: in the VBA editor, File > Import File. No reference has to be set.
' Use: write the design (JSON) into one cell, select it, and run PostDesign; the whole sheet appears on a new page, a
' row for each value with the JSON pointer to it. In a cell, =ORBWRIGHT(A1, "/angles/faces/0/bladeTilt") gives one value.
'
' The numbers say what fits, not what is safe: the machine's manual, local rules and instruction come first.
Option Explicit

' Where the service answers.
Private Const SERVICE As String = "http://localhost:8080"

' One value of a design's sheet, by its JSON pointer.
Public Function ORBWRIGHT(ByVal Design As String, ByVal Pointer As String) As Variant
    Dim Row As Variant, Cells As Variant
    For Each Row In Split(PostedTable(Design, "sheet"), vbCrLf)
        Cells = CellsOf(CStr(Row))
        If UBound(Cells) > 0 Then
            If Cells(0) = Pointer Then
                ORBWRIGHT = AsValue(CStr(Cells(1)))
                Exit Function
            End If
        ElseIf Left$(CStr(Row), 6) = "ERROR:" Then
            ORBWRIGHT = CStr(Row)
            Exit Function
        End If
    Next
    ORBWRIGHT = "ERROR: there is no " & Pointer & " in the answer"
End Function

' Posts the design in the selected cell and writes the whole sheet onto a new page.
Public Sub PostDesign()
    WriteTable CStr(ActiveCell.Value), "sheet"
End Sub

' Writes a table (angles, segments, cuts, bands, findings, sheet and so on) onto a new page.
Public Sub WriteTable(ByVal Design As String, ByVal Table As String)
    Dim Rows As Variant, Cells As Variant, Y As Long, X As Long, Page As Object
    Rows = Split(PostedTable(Design, Table), vbCrLf)
    Set Page = ActiveWorkbook.Worksheets.Add
    For Y = 0 To UBound(Rows)
        Cells = CellsOf(CStr(Rows(Y)))
        For X = 0 To UBound(Cells)
            If Not IsNumber(CStr(Cells(X))) Then Page.Cells(Y + 1, X + 1).NumberFormat = "@"
            Page.Cells(Y + 1, X + 1).Value = AsValue(CStr(Cells(X)))
        Next
    Next
End Sub

' Posts a design and returns a table as comma separated values, or what is wrong in a line that begins with ERROR.
Private Function PostedTable(ByVal Design As String, ByVal Table As String) As String
    Dim Request As Object
    On Error GoTo NoAnswer
    Set Request = CreateObject("MSXML2.ServerXMLHTTP.6.0")
    Request.Open "POST", SERVICE & "/v1/table/" & Table & "?errors=text", False
    Request.setRequestHeader "Content-Type", "application/json; charset=utf-8"
    Request.send Design
    PostedTable = Request.responseText
    Exit Function
NoAnswer:
    PostedTable = "ERROR: no answer from " & SERVICE
End Function

' The cells of a row of comma separated values (RFC 4180).
Private Function CellsOf(ByVal Row As String) As Variant
    Dim Cells() As String, Cell As String, Quoted As Boolean, I As Long, C As String, Count As Long
    For I = 1 To Len(Row)
        C = Mid$(Row, I, 1)
        If C = """" Then
            If Quoted And Mid$(Row, I + 1, 1) = """" Then
                Cell = Cell & C
                I = I + 1
            Else
                Quoted = Not Quoted
            End If
        ElseIf C = "," And Not Quoted Then
            ReDim Preserve Cells(Count)
            Cells(Count) = Cell
            Count = Count + 1
            Cell = ""
        Else
            Cell = Cell & C
        End If
    Next
    ReDim Preserve Cells(Count)
    Cells(Count) = Cell
    CellsOf = Cells
End Function

' A number whatever the spreadsheet's language is; a text as it is.
Private Function AsValue(ByVal Text As String) As Variant
    If IsNumber(Text) Then
        AsValue = Val(Text)
    Else
        AsValue = Text
    End If
End Function

' Whether a text is digits with a decimal point, as the service writes numbers.
Private Function IsNumber(ByVal Text As String) As Boolean
    Dim I As Long
    IsNumber = Len(Text) > 0
    For I = 1 To Len(Text)
        If InStr("0123456789.-", Mid$(Text, I, 1)) = 0 Then IsNumber = False
    Next
End Function
