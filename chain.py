import openpyxl
for n,up in (('chain',0),('rchain',1),('fib',2)):
  wb=openpyxl.Workbook(); ws=wb.active; ws.title='S'
  ws.append(['Strake','Thickness (in)','Width (in)','Length (ft)','F'])
  N=15000
  for i in range(2,N):
    ws.append([i,1,5,20,0])
    ws.cell(i,5).value = ('=E%d+1'%(i-1) if up==0 else '=E%d+1'%(i+1) if up==1 else '=E%d+E%d'%(i-1,i-2)) if i>3 and i<N-2 else 1
  wb.save(n+'.xlsx')
