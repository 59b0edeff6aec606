export * from '../site.ts'
